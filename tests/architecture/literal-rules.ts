import ts from 'typescript';
import type { SourceFile } from './source-files.ts';

/** Numbers that say nothing about cotton: none, one, a half or a pair, and the steps of decimals and percent. */
const plainNumbers: ReadonlySet<number> = new Set([0, 1, 2, 10, 100]);

/** Files whose numbers are the point of them: facts, the exact conversions of units, and the limits of what may be decided. */
const isTable = (path: string): boolean =>
  /[/-]facts\.ts$/.test(path) || path === 'src/model/units.ts' || path === 'src/model/decisions.ts';

/** A number inside a named function that measures nothing. */
interface Scrambler {
  readonly path: string;
  readonly holder: string;
  readonly reason: string;
}
const scramblers: readonly Scrambler[] = [
  {
    path: 'src/model/random.ts',
    holder: 'openStream',
    reason: 'the golden ratio in 32 bits, which scatters substreams: chosen for its bits',
  },
];

/** The name of the nearest function, or constant of the module, around a node. */
function holderOf(node: ts.Node): string | null {
  for (let at: ts.Node = node; at.parent; at = at.parent) {
    if (ts.isFunctionDeclaration(at) && at.name) return at.name.text;
    if (ts.isVariableDeclaration(at) && ts.isIdentifier(at.name) && ts.isSourceFile(at.parent.parent.parent))
      return at.name.text;
  }
  return null;
}

/** Whether a number stands where it cannot be a quantity: in a type, or as the place of an item in a list. */
function isStructure(node: ts.NumericLiteral): boolean {
  const { parent } = node;
  if (ts.isLiteralTypeNode(parent)) return true;
  if (ts.isPrefixUnaryExpression(parent) && ts.isLiteralTypeNode(parent.parent)) return true;
  return ts.isElementAccessExpression(parent) && parent.argumentExpression === node;
}

/** Numbers written into the code of a file of the model, one line each. */
export function strayNumbers({ path, text }: SourceFile): string[] {
  if (isTable(path)) return [];
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const scrambles = (node: ts.Node) =>
    scramblers.some((allowed) => allowed.path === path && allowed.holder === holderOf(node));
  const stray: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isBigIntLiteral(node) || (ts.isNumericLiteral(node) && !plainNumbers.has(Number(node.text)))) {
      const structure = ts.isNumericLiteral(node) && isStructure(node);
      if (!structure && !scrambles(node)) {
        const { line } = file.getLineAndCharacterOfPosition(node.getStart());
        stray.push(`${path}:${line + 1}: ${node.getText()}`);
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return stray;
}
