package garment

// Heading returns the notes that every sheet has, and every gauge, for it is kept.
func (p *Pattern) Heading() []string {
	var notes []string
	if p.Title != "" {
		notes = append(notes, p.Title)
	}
	if p.Size != "" {
		notes = append(notes, "size "+p.Size)
	}
	return notes
}
