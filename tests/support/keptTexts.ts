import ts from "typescript";

/**
 * Places where a text is asked for while a module is loaded, and so stays in the language of that moment: an import from
 * src/texts/english of which a property is read outside every function. A finding is "line: what".
 */
export function keptTextFindings(path: string, text: string): string[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  const topics = new Set(file.statements.flatMap(topicsOf));
  const findings: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node)) return;
    if (ts.isPropertyAccessExpression(node) && topics.has(node.expression.getText(file))) {
      const line = file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1;
      findings.push(`${line}: ${node.getText(file)} is kept`);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return findings;
}

/** The names under which a statement imports topics. */
function topicsOf(statement: ts.Statement): readonly string[] {
  if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) return [];
  const names = statement.importClause?.namedBindings;
  if (!statement.moduleSpecifier.text.includes("/texts/english/") || !names || !ts.isNamedImports(names))
    return [];
  return names.elements.map(({ name }) => name.text);
}
