package piece

// AlongGrain bounds the sine of the angle between the grain and a fold that runs
// along it: half a degree, more than a drawing is off by chance. Such a piece is
// laid by its fold.
const AlongGrain = 0.0087
