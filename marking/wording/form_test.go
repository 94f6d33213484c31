package wording

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestFormIsMadeOnce(t *testing.T) {
	form := FormOf(`\b(neck|neckline)\b`)
	assert.True(t, form.MatchString("the neckline of front"))
	assert.False(t, form.MatchString("a necktie"))
	assert.Same(t, form(), form())
}

// No form that is written anywhere in the rooms is one that cannot be read: it would be noticed
// only by whoever first asks it.
func TestFormsCanBeRead(t *testing.T) {
	files, err := filepath.Glob("../*/*.go")
	require.NoError(t, err)
	makers, found := []string{"FormOf", "anyOf", "wordsOf"}, 0
	for _, file := range files {
		tree, err := parser.ParseFile(token.NewFileSet(), file, nil, 0)
		require.NoError(t, err)
		ast.Inspect(tree, func(n ast.Node) bool {
			if call, ok := n.(*ast.CallExpr); ok && slices.Contains(makers, nameOf(call.Fun)) {
				found++
				expression := literals(call.Args[0])
				_, err := regexp.Compile(expression)
				assert.NoError(t, err, "%s: %s", file, expression)
			}
			return true
		})
	}
	assert.Greater(t, found, 40, "forms in the rooms")
}

// nameOf is the name of what is called, without its room.
func nameOf(e ast.Expr) string {
	switch e := e.(type) {
	case *ast.Ident:
		return e.Name
	case *ast.SelectorExpr:
		return e.Sel.Name
	}
	return ""
}

// literals are the texts of an expression, one after the other.
func literals(e ast.Expr) string {
	text := ""
	ast.Inspect(e, func(n ast.Node) bool {
		if l, ok := n.(*ast.BasicLit); ok && l.Kind == token.STRING {
			part, _ := strconv.Unquote(l.Value)
			text += part
		}
		return true
	})
	return text
}
