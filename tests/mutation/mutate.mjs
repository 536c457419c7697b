// Puts every mutant of a source into one text, each behind a question which of them is alive: `$m(17) ? mutated : original`.
import ts from 'typescript';

/** Operators and what stands in their place. */
const SWAPS = new Map([
  ['<', '>'],
  ['>', '<'],
  ['<=', '>'],
  ['>=', '<'],
  ['===', '!=='],
  ['!==', '==='],
  ['+', '-'],
  ['-', '+'],
  ['*', '/'],
  ['/', '*'],
  ['%', '*'],
  ['&&', '||'],
  ['||', '&&'],
  ['??', '&&'],
]);

/**
 * @param path as it is told
 * @param first the number of its first mutant
 * @returns the text, and its mutants: number, line, what is changed
 */
export function mutate(path, text, first) {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const mutants = [];
  const lines = text.split('\n');
  const own = (node) => text.slice(node.getStart(source), node.end);

  const add = (node, fresh) => {
    const number = first + mutants.length;
    const line = source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
    const short = (t) => t.replace(/\s+/g, ' ').slice(0, 90);
    mutants.push({
      number,
      path,
      line,
      text: lines[line - 1].trim(),
      from: short(own(node)),
      to: short(fresh),
    });
    return number;
  };

  /** The text of a node with the mutants of all that is in it. */
  function inner(node) {
    let [out, at] = ['', node.getStart(source)];
    ts.forEachChild(node, (child) => {
      out += text.slice(at, child.getStart(source)) + whole(child);
      at = child.end;
    });
    return out + text.slice(at, node.end);
  }

  /** The text of a node with its own mutants too. */
  function whole(node) {
    if (isOfTypes(node)) return own(node);
    if (ts.isReturnStatement(node) && node.expression !== undefined)
      return `{ if ($m(${add(node, 'return;')})) return undefined; ${inner(node)} }`;
    if (ts.isExpressionStatement(node)) return `{ if (!$m(${add(node, '(dropped)')})) { ${inner(node)} } }`;
    if (!isExpression(node)) return inner(node);
    const fresh = replacements(node, own);
    if (fresh.length === 0) return inner(node);
    const numbered = fresh.map((f) => `$m(${add(node, f)}) ? (${f}) : `);
    return `(${numbered.join('')}(${inner(node)}))`;
  }

  return { text: text.slice(0, source.getStart(source)) + inner(source) + text.slice(source.end), mutants };
}

const isExpression = (node) =>
  ts.isBinaryExpression(node) ||
  ts.isNumericLiteral(node) ||
  ts.isPrefixUnaryExpression(node) ||
  ts.isConditionalExpression(node) ||
  (ts.isPropertyAccessExpression(node) && /^Math\.(min|max)$/.test(node.getText()));

/** What may stand in place of an expression. */
function replacements(node, own) {
  if (isPlace(node)) return [];
  if (ts.isBinaryExpression(node)) {
    const swap = SWAPS.get(node.operatorToken.getText());
    if (swap === undefined || isOfTexts(node)) return [];
    return [`(${own(node.left)}) ${swap} (${own(node.right)})`];
  }
  if (ts.isNumericLiteral(node)) {
    if (ts.isPropertyAccessExpression(node.parent)) return [];
    const value = Number(node.text.replaceAll('_', ''));
    return [String(value + 1), String(value - 1)];
  }
  if (ts.isPrefixUnaryExpression(node)) {
    if (node.operator !== ts.SyntaxKind.MinusToken && node.operator !== ts.SyntaxKind.ExclamationToken)
      return [];
    return [own(node.operand)];
  }
  if (ts.isConditionalExpression(node))
    return [`!(${own(node.condition)}) ? (${own(node.whenTrue)}) : (${own(node.whenFalse)})`];
  return [own(node).endsWith('min') ? 'Math.max' : 'Math.min'];
}

/** True for what is assigned to, named or declared rather than computed. */
function isPlace(node) {
  const { parent } = node;
  if (ts.isPropertyAssignment(parent) && parent.name === node) return true;
  if (ts.isBindingElement(parent) && parent.initializer !== node) return true;
  return ts.isEnumMember(parent) || ts.isPropertyDeclaration(parent);
}

/** True for texts that are put together: their words are not what is computed. */
function isOfTexts(node) {
  const isText = (n) => ts.isStringLiteralLike(n) || ts.isTemplateExpression(n);
  return node.operatorToken.getText() === '+' && (isText(node.left) || isText(node.right));
}

const isOfTypes = (node) =>
  ts.isTypeNode(node) ||
  ts.isTypeAliasDeclaration(node) ||
  ts.isInterfaceDeclaration(node) ||
  ts.isImportDeclaration(node) ||
  ts.isExportDeclaration(node) ||
  ts.isTypeParameterDeclaration(node);
