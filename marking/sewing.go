package marking

// Rules of this file. How a garment was sewn is written down, so that it can be done
// again: what the file says, and a line to write on for what it leaves out.

// Setting is one thing to be noted of how a garment is sewn.
type Setting struct {
	Name  string // "needle"
	Value string // "" where the file does not say
}

// settings lists what a file says of how it is sewn, and what it leaves out.
func settings(s SewingSpec) []Setting {
	return []Setting{
		{"stitch length", s.Stitch.Value},
		{"needle", s.Needle.Value},
		{"thread", s.Thread.Value},
		{"tension", s.Tension.Value},
		{"needle position", s.Position.Value},
	}
}
