package figures

// strip is a plain length of cloth, 30 in long and 10 in wide, whose raw edge
// lies at x = 0: flat places of tucks are their x.
const strip = "raw: 0,10 0,0\nbottom: 0,0 30,0\nfar: 30,0 30,10\ntop: 30,10 0,10\n---\n"
