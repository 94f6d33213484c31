package main

import (
	"fmt"
	"strconv"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/wording"
)

// Rules of this file: for a class several garments are made at once, all alike.

// timesFlag is the option that says how many garments are made.
func timesFlag() cli.Flag {
	return &cli.StringFlag{Name: "times", Usage: "reckon what is torn, cut and bought for `NUMBER` garments that are made at once, up to " + strconv.Itoa(garment.MostGarments)}
}

// readTimes is how many garments are made; 1 where it is not given.
func readTimes(c *cli.Context) (int, error) {
	if !c.IsSet("times") {
		return 1, nil
	}
	hint := fmt.Sprintf("write a whole number from 1 to %d, such as --times 10", garment.MostGarments)
	n, err := strconv.Atoi(c.String("times"))
	switch {
	case err != nil:
		return 0, misuse("--times: "+wording.Quoted(c.String("times"))+" is no number of garments", hint)
	case n < 1 || n > garment.MostGarments:
		return 0, misuse(fmt.Sprintf("--times: %d garments are not reckoned at once", n), hint)
	}
	return n, nil
}

// mostLaid is the most pieces that are laid on the cloth for all garments together. It bounds the
// time: a class of 200 may make garments of 50 pieces each.
const mostLaid = 10_000

// forGarments is a pattern for so many garments, if they are reckoned at once.
func forGarments(p *garment.Pattern, times int) (*garment.Pattern, error) {
	cut := 0
	for i := range p.Pieces {
		cut += p.Pieces[i].Cut
	}
	if times > 1 && cut*times > mostLaid {
		return nil, optionFault("times", &fault.Fault{
			Cause: fmt.Sprintf("%d garments have %s pieces to be cut; at most %s are laid on the cloth", times, wording.Thousands(cut*times), wording.Thousands(mostLaid)),
			Hint:  "reckon fewer garments at once",
		})
	}
	return p.ForGarments(times), nil
}
