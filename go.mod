module tuckmark

go 1.26.0

require (
	github.com/BurntSushi/toml v1.6.0 // indirect
	github.com/agnivade/levenshtein v1.2.2 // indirect
	github.com/go-pdf/fpdf v0.9.0 // indirect
	github.com/stretchr/testify v1.12.1 // indirect
	github.com/urfave/cli/v3 v3.14.0 // indirect
	go.yaml.in/yaml/v3 v3.0.5 // indirect
	golang.org/x/image v0.47.0 // indirect
	golang.org/x/text v0.43.0 // indirect
	pgregory.net/rapid v1.3.0 // indirect
	rsc.io/pdf v0.1.1 // indirect
)
