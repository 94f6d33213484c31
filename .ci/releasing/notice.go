package main

import (
	"fmt"
	"slices"
	"strings"
)

// noticeName is the file that tells whose work is in the programs.
const noticeName = "NOTICE"

// noticeOf tells whose work is in the programs, and what each asks to be told with them. What
// has the same text stands together. One that is not in every program says in which.
func noticeOf(programs []program) ([]byte, error) {
	own, err := goLicence()
	if err != nil {
		return nil, err
	}
	all := []licence{own}
	in := map[string][]string{}
	for _, p := range programs {
		for _, m := range p.modules {
			licences, err := m.licences()
			if err != nil {
				return nil, err
			}
			for _, one := range licences {
				if !slices.Contains(in[one.of], p.name) {
					in[one.of] = append(in[one.of], p.name)
				}
				if !slices.Contains(all, one) {
					all = append(all, one)
				}
			}
		}
	}
	slices.SortStableFunc(all[1:], func(a, b licence) int { return strings.Compare(a.of, b.of) })
	var text strings.Builder
	text.WriteString("The licence of tuckmark itself stands in LICENSE. The programs hold the work of others as\n" +
		"well, named here, each with the text that is to go along with it.\n")
	for len(all) > 0 {
		same, rest := parted(all)
		fmt.Fprintf(&text, "\n%s\n\n", strings.Repeat("=", 78))
		for _, one := range same {
			text.WriteString(one.of + " (" + one.kind + ")")
			if where := in[one.of]; len(where) > 0 && len(where) < len(programs) {
				text.WriteString(", in the programs " + strings.Join(where, ", "))
			}
			text.WriteString("\n")
		}
		text.WriteString("\n" + same[0].text + "\n")
		all = rest
	}
	return []byte(text.String()), nil
}

// parted returns the licences with the text of the first, and the others.
func parted(all []licence) (same, rest []licence) {
	for _, one := range all {
		if one.text == all[0].text {
			same = append(same, one)
		} else {
			rest = append(rest, one)
		}
	}
	return same, rest
}
