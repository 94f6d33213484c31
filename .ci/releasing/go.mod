module tuckmark/releasing

go 1.26.0

require github.com/google/licensecheck v0.3.1
