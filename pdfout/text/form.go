package text

// ItemGap is kept free under each step, in sizes of its text.
const ItemGap = 0.4
