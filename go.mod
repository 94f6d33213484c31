module tuckmark

go 1.26.0

require (
	github.com/BurntSushi/toml v1.6.0
	github.com/agnivade/levenshtein v1.2.2
	github.com/go-pdf/fpdf v0.9.0
	github.com/stretchr/testify v1.12.1
	github.com/urfave/cli/v3 v3.14.0
	golang.org/x/image v0.47.0
	golang.org/x/text v0.43.0
	pgregory.net/rapid v1.3.0
	rsc.io/pdf v0.1.1
)

require go.yaml.in/yaml/v3 v3.0.5 // indirect
