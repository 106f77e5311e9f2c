/** A piece of a formula as it is set: letters, or a part that stands over, under, above or below others. */
export type FormulaNode =
  | string
  | { readonly frac: readonly [readonly FormulaNode[], readonly FormulaNode[]] }
  | { readonly root: readonly FormulaNode[] }
  | { readonly sub: readonly FormulaNode[] }
  | { readonly sup: readonly FormulaNode[] }
  | { readonly over: readonly FormulaNode[] };

const greek: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  varepsilon: 'ε',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'μ',
  nu: 'ν',
  pi: 'π',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  varphi: 'φ',
  chi: 'χ',
  Delta: 'Δ',
  Sigma: 'Σ',
  Phi: 'Φ',
  Omega: 'Ω',
};

/** The fonts of the papers have no corners that round, no turned plus-minus and no sign of membership. */
const signs: Readonly<Record<string, string>> = {
  sum: '∑',
  int: '∫',
  infty: '∞',
  pm: '±',
  mp: '−/+',
  le: ' ≤ ',
  ge: ' ≥ ',
  approx: ' ≈ ',
  propto: ' ~ ',
  cdot: ' · ',
  times: ' × ',
  to: ' → ',
  Rightarrow: ' ⇒ ',
  in: ' in ',
  dots: '…',
  lceil: 'ceil(',
  rceil: ')',
  lfloor: 'floor(',
  rfloor: ')',
  quad: '\u2003',
  qquad: '\u2003\u2003',
  circ: '°',
  ' ': ' ',
  ',': '\u2009',
};

const letters: Readonly<Record<string, string>> = { ' ': '', '-': '−', "'": '′' };

const named = new Set([
  'max',
  'min',
  'ln',
  'log',
  'exp',
  'sin',
  'cos',
  'tanh',
  'cosh',
  'arccos',
  'arcsin',
  'arctan',
]);

const accents: Readonly<Record<string, string>> = { dot: '\u0307', hat: '\u0302' };
/** Groups that are set as what stands in them. */
const plain = new Set(['text', 'mathrm', 'mathit', 'operatorname', 'underline']);
const silent = new Set(['left', 'right', 'textstyle', '!']);
const escaped = new Set(['{', '}', '#', '%']);

/** Neighbouring letters as one run: each run is shaped on its own. */
const joined = (nodes: readonly FormulaNode[]): readonly FormulaNode[] => {
  const runs: FormulaNode[] = [];
  for (const node of nodes) {
    const last = runs.at(-1);
    if (typeof node === 'string' && typeof last === 'string') runs[runs.length - 1] = last + node;
    // an index stands before a power, however it was written
    else if (typeof node === 'object' && 'sub' in node && typeof last === 'object' && 'sup' in last) {
      runs.splice(-1, 0, node);
    } else runs.push(node);
  }
  return runs;
};

/**
 * A formula of a sheet as pieces that a paper can set without a font of mathematics.
 *
 * Method   reads the small part of TeX in which sheets write their formulas; a command that is none of it is a mistake
 *          of ours and throws
 * Cost     O(length)
 */
export const formulaTree = (tex: string): readonly FormulaNode[] => {
  const tokens: readonly string[] = tex.match(/\\[a-zA-Z]+|\\.|[\s\S]/g) ?? [];
  let at = 0;
  const row = (until?: string): readonly FormulaNode[] => {
    const nodes: FormulaNode[] = [];
    while (at < tokens.length) {
      const token = tokens[at++]!;
      if (token === until) break;
      nodes.push(...piece(token));
    }
    return joined(nodes);
  };
  /** The next token that is no blank. */
  const ahead = (): string => tokens.slice(at, at + 2).find((token) => token !== ' ') ?? ' ';
  const argument = (): readonly FormulaNode[] => {
    while (tokens[at] === ' ') at += 1;
    const token = tokens[at++];
    if (token === undefined) return [];
    return token === '{' ? row('}') : piece(token);
  };
  /** A text, in which blanks count. */
  const words = (): string => {
    const end = tokens.indexOf('}', at);
    const text = tokens
      .slice(at + 1, end)
      .map((token) => (token.length === 2 ? token.slice(1) : token))
      .join('');
    at = end + 1;
    return text;
  };
  const command = (name: string): readonly FormulaNode[] => {
    if (name === 'frac' || name === 'tfrac') return [{ frac: [argument(), argument()] }];
    if (name === 'binom') return ['C(', ...argument(), ', ', ...argument(), ')'];
    if (name === 'sqrt') return [{ root: argument() }];
    if (name === 'bar' || name === 'overline') return [{ over: argument() }];
    if (name === 'text') return [words()];
    if (accents[name] !== undefined) return [...argument(), accents[name]];
    if (plain.has(name)) return argument();
    if (silent.has(name)) return [];
    if (escaped.has(name)) return [name];
    if (named.has(name)) return [`\u2009${name}${'_^'.includes(ahead()) ? '' : ' '}`];
    const sign = greek[name] ?? signs[name];
    if (sign === undefined) throw new Error(`no letter for \\${name} in a formula`);
    return [sign];
  };
  const piece = (token: string): readonly FormulaNode[] => {
    if (token === '{') return row('}');
    if (token === '_') return [{ sub: argument() }];
    if (token === '^') {
      const raised = argument();
      return raised.length === 1 && raised[0] === '°' ? raised : [{ sup: raised }];
    }
    if (token.length > 1) return command(token.slice(1));
    if ('=<>+'.includes(token)) return [` ${token} `];
    return [letters[token] ?? token];
  };
  return row();
};
