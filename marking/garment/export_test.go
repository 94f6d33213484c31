package garment

// SplitName is seen by the tests.
var SplitName = splitName
