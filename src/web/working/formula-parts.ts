const opening = new Set(['{', '(', '[', '\\{', '\\lceil', '\\lfloor', '\\begin']);
const closing = new Set(['}', ')', ']', '\\}', '\\rceil', '\\rfloor', '\\end']);
const relations = new Set([
  '=',
  '<',
  '>',
  '\\le',
  '\\ge',
  '\\approx',
  '\\in',
  '\\propto',
  '\\to',
  '\\Rightarrow',
]);
const operators = new Set(['+', '-', '\\pm', '\\mp', '\\cdot', '\\times']);
const apart = new Set(['\\quad', '\\qquad']);

/** What stands before a sign that joins two terms, where a sign of its own stands before one. */
const signs = new Set([...relations, ...operators, ',', '^', '_']);

/** Whether a formula may go on in the next line before this token: at a relation, a sum, a product, or words. */
const breaksBefore = (tex: readonly string[], i: number, before: string | undefined): boolean => {
  const token = tex[i]!;
  if (before === undefined) return false;
  if (relations.has(token)) return true;
  if (operators.has(token)) return !signs.has(before);
  return token === '\\text' && tex[i + 2] === ' ';
};

/**
 * A formula in the pieces between which its line may break: statements that a wide space parts, each of them cut
 * before its relations, sums and words and behind its commas, never inside of a bracket, a fraction or an index.
 */
export const formulaParts = (tex: string): readonly (readonly string[])[] => {
  const tokens = tex.match(/\\(?:[a-zA-Z]+|.)|[^\\]/g) ?? [];
  const statements: string[][] = [['']];
  let depth = 0;
  let before: string | undefined;
  for (const [i, token] of tokens.entries()) {
    const pieces = statements.at(-1)!;
    const sized = tokens[i - 1] === '\\left' || tokens[i - 1] === '\\right';
    if (depth === 0 && apart.has(token)) {
      statements.push(['']);
      before = undefined;
      continue;
    }
    // an empty group before it keeps the room of a sign between two terms
    if (depth === 0 && breaksBefore(tokens, i, before)) pieces.push('{}');
    pieces[pieces.length - 1] += token;
    if (depth === 0 && token === ',') pieces.push('');
    if (token === '\\left' || (!sized && opening.has(token))) depth += 1;
    if (token === '\\right' || (!sized && closing.has(token))) depth -= 1;
    if (token.trim() !== '' && token !== '\\ ' && token !== '\\,') before = token;
  }
  return statements
    .map((pieces) => pieces.map((piece) => piece.trim()).filter((piece) => piece !== '' && piece !== '{}'))
    .filter((pieces) => pieces.length > 0);
};
