import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, DEEPEST } from './canonical-json.ts';

const canonical = (value: unknown): string => {
  const text = canonicalJson(value);
  if (!text.ok) throw new Error(JSON.stringify(text.problems));
  return text.value;
};
const codes = (value: unknown): readonly string[] => {
  const text = canonicalJson(value);
  return text.ok ? [] : text.problems.map((problem) => `${problem.code} ${problem.path}`);
};
const double = (hex: string): number => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${hex}`));
  return view.getFloat64(0);
};

// RFC 8785 (June 2020), read in public transcriptions that agree with each other
describe('RFC 8785', () => {
  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('appendix B: the double %s is written %s', (hex, text) => {
    expect(canonical(double(hex))).toBe(text);
  });

  it.each(['7fffffffffffffff', '7ff0000000000000', 'fff0000000000000'])(
    'appendix B: the double %s is refused',
    (hex) => {
      expect(codes([double(hex)])).toEqual(['RECORD_NOT_JSON /0']);
    },
  );

  it('3.2.2 to 3.2.4: the sample gives the published bytes', () => {
    const sample = String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`;
    const bytes = `
      7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72
      75 65 2c 66 61 6c 73 65 5d 2c 22 6e 75 6d 62 65 72 73 22 3a
      5b 33 33 33 33 33 33 33 33 33 2e 33 33 33 33 33 33 33 2c 31
      65 2b 33 30 2c 34 2e 35 2c 30 2e 30 30 32 2c 31 65 2d 32 37
      5d 2c 22 73 74 72 69 6e 67 22 3a 22 e2 82 ac 24 5c 75 30 30
      30 66 5c 6e 41 27 42 5c 22 5c 5c 5c 5c 5c 22 2f 22 7d`;
    const written = Buffer.from(canonical(JSON.parse(sample)), 'utf8').toString('hex');
    expect(written).toBe(bytes.replace(/\s/g, ''));
  });

  it('3.2.3: members stand in the order of UTF-16 code units, not of code points', () => {
    const sample = String.raw`{
      "\u20ac": "Euro Sign",
      "\r": "Carriage Return",
      "\ufb33": "Hebrew Letter Dalet With Dagesh",
      "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face",
      "\u0080": "Control",
      "\u00f6": "Latin Small Letter O With Diaeresis"
    }`;
    const order = [...canonical(JSON.parse(sample)).matchAll(/:"([^"]*)"/g)].map((found) => found[1]);
    expect(order).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  // the RFC author's published test data, read
  it.each([
    [
      'structures',
      String.raw`{"1": {"f": {"f": "hi","F": 5} ,"\n": 56.0}, "10": { }, "": "empty", "a": { }, "111": [ { } ], "A": { }}`,
      String.raw`{"":"empty","1":{"\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{}],"A":{},"a":{}}`,
    ],
    [
      'french',
      '{"peach": "This sorting order", "péché": "is wrong according to French", "pêche": "but canonicalization MUST", "sin": "ingnore locale"}',
      '{"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ingnore locale"}',
    ],
    [
      'unicode',
      String.raw`{"Unnormalized Unicode":"\u1e0d\u0307"}`,
      '{"Unnormalized Unicode":"\u1e0d\u0307"}',
    ],
    [
      'weird',
      String.raw`{"\u20ac":"Euro Sign","1":"One","\u0080":"Control\u007f","\ud83d\ude02":"Smiley","\u00f6":"o","\ufb33":"Dalet","</script>":"Browser Challenge"}`,
      '{"1":"One","</script>":"Browser Challenge","\u0080":"Control\u007f","\u00f6":"o","\u20ac":"Euro Sign","\ud83d\ude02":"Smiley","\ufb33":"Dalet"}',
    ],
    [
      'values',
      String.raw`{"numbers": [1E30, 4.50, 333333333.33333329, 2e-3, 0.000000000000000000000000001], "escaping": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/", "literals": [null, true, false]}`,
      String.raw`{"escaping":"€$\u000f\nA'B\"\\\\\"/","literals":[null,true,false],"numbers":[1e+30,4.5,333333333.3333333,0.002,1e-27]}`,
    ],
    ['arrays', '[ 56, { "d": true, "10": null, "1": [ ] } ]', '[56,{"1":[],"10":null,"d":true}]'],
  ])('published test data: %s', (_, given, written) => {
    expect(canonical(JSON.parse(given))).toBe(written);
  });

  it('3.2.2.2: control characters take the short escapes where there are any, else lower-case hexadecimal', () => {
    expect(canonical('\b\t\n\f\r\u0000\u001f\u007f\u2028')).toBe(
      '"\\b\\t\\n\\f\\r\\u0000\\u001f\u007f\u2028"',
    );
  });
});

describe('canonical JSON', () => {
  it('refuses half a surrogate pair, in texts and in names', () => {
    expect(codes({ a: 'x\ud83d', b: '\ude00', '\ud800': 1, fine: '\ud83d\ude00' })).toEqual([
      'RECORD_TEXT_BROKEN /a',
      'RECORD_TEXT_BROKEN /b',
      'RECORD_TEXT_BROKEN /\ud800',
    ]);
  });

  it('refuses what JSON cannot hold instead of dropping it, all at once', () => {
    const given = { a: undefined, b: () => 1, c: Symbol('s'), d: 1n, e: new Date(0), f: [NaN, new Map()] };
    expect(codes(given)).toEqual([
      'RECORD_NOT_JSON /a',
      'RECORD_NOT_JSON /b',
      'RECORD_NOT_JSON /c',
      'RECORD_NOT_JSON /d',
      'RECORD_NOT_JSON /e',
      'RECORD_NOT_JSON /f/0',
      'RECORD_NOT_JSON /f/1',
    ]);
    const sparse = new Array<unknown>(2);
    expect(codes(sparse)).toEqual(['RECORD_NOT_JSON /0', 'RECORD_NOT_JSON /1']);
  });

  it('ends a circle, and any nesting, at the deepest level allowed', () => {
    const circle: Record<string, unknown> = {};
    circle.self = circle;
    expect(codes(circle)[0]).toMatch(/^RECORD_TOO_DEEP/);
    const nest = (depth: number): unknown => JSON.parse('['.repeat(depth) + ']'.repeat(depth));
    expect(codes(nest(DEEPEST))).toEqual([]);
    expect(codes(nest(DEEPEST + 1))[0]).toMatch(/^RECORD_TOO_DEEP/);
    expect(codes(nest(100_000))[0]).toMatch(/^RECORD_TOO_DEEP/);
  });

  it('reads back as the same value, and the order of members leaves no trace', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 5 }), (json) => {
        const value: unknown = JSON.parse(json);
        const written = canonical(value);
        // toEqual tells -0 from 0, which the text of JSON does not keep
        expect(JSON.parse(written)).toEqual(JSON.parse(JSON.stringify(value)));
        expect(canonical(JSON.parse(written))).toBe(written);
        if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
          expect(canonical(Object.fromEntries(Object.entries(value).reverse()))).toBe(written);
        }
      }),
    );
  });
});
