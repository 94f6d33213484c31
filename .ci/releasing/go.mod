module tuckmark/releasing

go 1.26.0

require github.com/google/licensecheck v0.3.1

require (
	github.com/stretchr/testify v1.12.1
	go.yaml.in/yaml/v3 v3.0.5 // indirect
)
