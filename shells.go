package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/wording"
)

// Rules of this file: a row for each shell, and what it reads. The scripts hold no word of
// the command line: they ask the program how what is begun may go on. Nothing that was typed is
// carried out.

const completionName = "completion"

func completionCommand() *cli.Command {
	return &cli.Command{
		Name:      completionName,
		Usage:     "print what lets a shell finish the words that you begin: " + wording.Listed(shellNames(), "or"),
		UsageText: "tuckmark completion SHELL",
		Description: "With it the Tab key finishes commands, options and the names of pieces, views and files.\n" +
			"Put the line for your shell into the file that is read whenever it begins:\n\n" +
			shellLines(),
		Action: func(c *cli.Context) error {
			if c.Args().Len() != 1 {
				return misuse("completion takes the name of one shell", "the shells it knows are "+wording.Listed(shellNames(), "and"))
			}
			return sayScript(c.App.Writer, c.Args().First())
		},
	}
}

// sayScript prints what a shell of this name is to read.
func sayScript(w io.Writer, name string) error {
	for _, shell := range shells {
		if shell.name == name {
			return writeOut(w, "the script", []byte(shell.script))
		}
	}
	hint := "the shells it knows are " + wording.Listed(shellNames(), "and")
	if near := wording.Nearest(name, shellNames()); near != "" {
		hint = wording.DidYouMean(near)
	}
	return misuse(fmt.Sprintf("there is no script for the shell %q", name), hint)
}

func shellNames() []string {
	var names []string
	for _, shell := range shells {
		names = append(names, shell.name)
	}
	return names
}

// shellLines are the lines that make each shell read its script, a paragraph each.
func shellLines() string {
	var all strings.Builder
	for _, shell := range shells {
		fmt.Fprintf(&all, "%s, %s:\n  %s\n", shell.name, shell.file, shell.line)
	}
	return strings.TrimRight(all.String(), "\n")
}

// shell is one that can complete a command line.
type shell struct {
	name   string
	file   string // what it reads whenever it begins
	line   string // what makes it read the script
	script string
}

var shells = []shell{
	{"bash", "in ~/.bashrc", `eval "$(tuckmark completion bash)"`, bashScript},
	{"zsh", "in ~/.zshrc", `autoload -U compinit && compinit && eval "$(tuckmark completion zsh)"`, zshScript},
	{"fish", "in ~/.config/fish/config.fish", `tuckmark completion fish | source`, fishScript},
	{"powershell", "in the file that $PROFILE names", `tuckmark completion powershell | Out-String | Invoke-Expression`, powershellScript},
}

// bashScript keeps to what bash 3.2 knows, which is that of macOS. bash hands words on with their
// quotes and backslashes, and parts them at an equals sign and at a colon: what stands ahead of that
// it keeps, and takes only what comes behind. Words are put together again at colons; the program
// itself knows of equals signs.
const bashScript = `# tuckmark for bash: the Tab key finishes commands, options and the names of pieces and files
_tuckmark() {
	local word=${COMP_WORDS[COMP_CWORD]} quote="'" kept=$'\1' words before line name ahead i n=-1
	words=("${COMP_WORDS[@]//\\$quote/$kept}")
	words=("${words[@]//[\\\"$quote]/}")
	words=("${words[@]//$kept/$quote}")
	words=("${words[@]/#\~\//$HOME/}")
	before=()
	for ((i = 0; i <= COMP_CWORD; i++)); do
		if ((i)) && [[ ${words[i]} == : || ${words[i-1]} == : ]]; then
			ahead=${before[n]}
		else
			ahead= n=$((n + 1))
		fi
		before[n]=$ahead${words[i]}
	done
	[[ $word == : ]] && ahead=${before[n]}
	COMPREPLY=()
	while IFS= read -r line; do
		if [[ $line == \** ]]; then
			compopt -o filenames 2>/dev/null
			while IFS= read -r name; do
				COMPREPLY+=("${name#"$ahead"}")
			done < <(compgen -f -X "!$line" -- "${before[n]#=}"; compgen -d -- "${before[n]#=}")
		else
			name=${line%%$'\t'*} name=${name#"$ahead"}
			[[ $word != [\"\']* && $name == *[^[:alnum:]_.,:=/-]* ]] && name=$(printf %q "$name") name=${name//\\,/,}
			COMPREPLY+=("$name")
		fi
	done < <("${before[0]}" "${before[@]:1:n-1}" "--finish=${before[n]}" "${words[@]:COMP_CWORD+1}" 2>/dev/null)
}
complete -F _tuckmark tuckmark
`

// zshScript can also stand in a folder of $fpath as _tuckmark.
const zshScript = `#compdef tuckmark
# tuckmark for zsh: the Tab key finishes commands, options and the names of pieces and files
_tuckmark() {
	local line
	local -a before after offered endings
	before=("${(@)${(@Q)words[1,CURRENT-1]}/#\~\//$HOME/}")
	after=("${(@)${(@Q)words[CURRENT+1,-1]}/#\~\//$HOME/}")
	for line in "${(@f)$("${(@)before}" "--finish=${(Q)PREFIX}" "${(@)after}" 2>/dev/null)}"; do
		if [[ $line == \** ]]; then
			endings+=("$line")
		elif [[ -n $line ]]; then
			offered+=("${${line//:/\\:}/$'\t'/:}")
		fi
	done
	[[ -n $endings ]] && compset -P '-*='
	if [[ $endings == '*/' ]]; then
		_path_files -/
	elif (( $#endings )); then
		_files -g "$endings"
	elif (( $#offered )); then
		_describe tuckmark offered
	fi
}
if [[ $funcstack[1] == _tuckmark ]]; then
	_tuckmark
else
	compdef _tuckmark tuckmark
fi
`

const powershellScript = `# tuckmark for PowerShell: the Tab key finishes commands, options and the names of pieces and files
Register-ArgumentCompleter -Native -CommandName tuckmark -ScriptBlock {
	param($word, $line, $cursor)
	$plain = { "$_".Trim("'", '"') }
	$elements = @($line.CommandElements | Select-Object -Skip 1)
	$before = @($elements | Where-Object { $_.Extent.EndOffset -lt $cursor } | ForEach-Object $plain)
	$after = @($elements | Where-Object { $_.Extent.StartOffset -gt $cursor } | ForEach-Object $plain)
	$begun = "$word".Trim("'", '"')
	foreach ($said in @(& "$($line.CommandElements[0])" @before "--finish=$begun" @after 2>$null)) {
		$name, $means = $said.Split([char]9)
		$names = @($name)
		if ($name.StartsWith('*')) {
			$folder = $begun -replace '[^/\\]*$', ''
			$names = @(Get-ChildItem -Path "$begun*" | Where-Object { $_.PSIsContainer -or $_.Name -like $name } | ForEach-Object { $folder + $_.Name })
			$means = ''
		}
		foreach ($one in $names) {
			$typed = if ($one -match '[^\w.,:=/\\-]') { "'" + $one.Replace("'", "''") + "'" } else { $one }
			$told = if ($means) { $means } else { $one }
			[System.Management.Automation.CompletionResult]::new($typed, $one, 'ParameterValue', $told)
		}
	}
}
`

// fishScript has fish part what a word means from it, which it does at a tab too.
const fishScript = `# tuckmark for fish: the Tab key finishes commands, options and the names of pieces and files
function __tuckmark_words
	set -l before (commandline -opc | string replace -r '^~/' "$HOME/")
	set -l word (commandline -ct)
	set -l begun (string replace -ra '[\\\\"\']' '' -- $word)
	set -l after (commandline -op)
	set -e after[1..(count $before)]
	test -n "$word"; and set -e after[1]
	for line in (command $before "--finish=$begun" $after 2>/dev/null)
		if string match -q '\\**' -- $line
			set -l ending (string sub -s 2 -- $line)
			__fish_complete_suffix $ending | string match -r '.*(?:'(string escape --style=regex -- $ending)'|/)(?:\\t.*)?$'
		else
			echo $line
		end
	end
end
complete -c tuckmark -f -a '(__tuckmark_words)'
`
