package paper

// Rules of this file: one row for each paper with a name, and nothing else. Behind its
// name stand its title, as it is printed, its width and its height in mm. The title
// begins with what a sentence calls it, up to the comma.

// All lists what Find finds by name, in the order in which people are told: sizes of
// ANSI/ASME Y14.1 and ISO 216 (from memory of both standards), of legal paper as it is
// commonly sold, and one that fits on both letter and A4 paper.
func All() []Paper {
	const inch = 25.4
	return []Paper{
		newPaper("letter", "letter paper, 8 1/2 x 11 in", 8.5*inch, 11*inch),
		newPaper("a4", "A4 paper, 210 x 297 mm", 210, 297),
		newPaper("legal", "legal paper, 8 1/2 x 14 in", 8.5*inch, 14*inch),
		newPaper("tabloid", "tabloid paper, 11 x 17 in", 11*inch, 17*inch),
		newPaper("a3", "A3 paper, 297 x 420 mm", 297, 420),
		newPaper(eitherName, "letter or A4 paper, whichever there is", 210, 11*inch),
	}
}
