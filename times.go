package main

import (
	"fmt"
	"strconv"

	"github.com/urfave/cli/v2"

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

// forGarments is a pattern for so many garments, if they are reckoned at once.
func forGarments(p *garment.Pattern, times int) (*garment.Pattern, error) {
	if err := p.CheckGarments(times); err != nil {
		return nil, optionFault("times", err)
	}
	return p.ForGarments(times), nil
}
