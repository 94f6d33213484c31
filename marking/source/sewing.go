package source

// Setting is one thing to be noted of how a garment is sewn.
type Setting struct {
	Name  string // "needle"
	Value string // "" where the file does not say
}

// Settings lists what a file says of how it is sewn, and what it leaves out.
func Settings(s SewingSpec) []Setting {
	return []Setting{
		{"stitch length", s.Stitch.V},
		{"needle", s.Needle.V},
		{"thread", s.Thread.V},
		{"tension", s.Tension.V},
		{"needle position", s.Position.V},
	}
}
