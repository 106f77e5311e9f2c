import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fieldAt, fieldsAt } from './field-at.ts';
import { bookForm, type Form } from './form.ts';
import { kindAt } from './kind-at.ts';
import { nearestWord } from './nearest-word.ts';
import { placeName } from './place-name.ts';
import { pointerOf, stepsOf } from './pointer.ts';
import { tagPath, tagsOf } from './tag-path.ts';
import { valueAt } from './value-at.ts';
import { walk } from './walk.ts';

const demo = JSON.parse(readFileSync('src/book/demo/flagon-line.json', 'utf8')) as unknown;
const named = (path: string): string =>
  placeName(demo, path)
    .map((part) =>
      part.is === 'thing' ? part.name : part.is === 'field' ? part.field : `${part.of} ${part.number}`,
    )
    .join(', ');

describe('the kind at a place', () => {
  it('is that of the schema for every quantity of the demonstration book', () => {
    let count = 0;
    walk(demo, {
      leaf: (_, form, steps) => {
        if (form.is === 'quantity') count += 1;
        expect([pointerOf(steps), kindAt(pointerOf(steps))]).toEqual([
          pointerOf(steps),
          form.is === 'quantity' ? form.quantity.kind : undefined,
        ]);
      },
    });
    expect(count).toBeGreaterThan(100);
  });

  it('is known where the book has nothing yet', () => {
    expect(kindAt('/floors/7/supply/run/9/bore')).toBe('length');
    expect(kindAt('/floors/0/supply/source/regulator/set')).toBe('gaugePressure');
    expect(kindAt('/floors/0/supply/source/curve/2/head')).toBe('length');
    expect(kindAt('/floors/0/room/ambient')).toBe('temperature');
    expect(kindAt('/line/stations/0/lanes/0/pulses')).toBe('pulseDensity');
  });

  it('goes on inside a quantity that carries its standing', () => {
    expect(kindAt('/floors/0/room/ambient/value')).toBe('temperature');
    expect(kindAt('/floors/0/room/ambient/value/1')).toBe('temperature');
    expect(kindAt('/floors/0/room/ambient/spread')).toBe('temperatureDifference');
    expect(kindAt('/floors/0/supply/source/static/spread')).toBe('pressureDifference');
    expect(kindAt('/floors/0/room/ambient/by')).toBeUndefined();
  });

  it('is none where no quantity may stand', () => {
    for (const path of [
      '',
      '/twinfloor',
      '/line',
      '/line/stations',
      '/line/stations/0/tag',
      '/nowhere',
      '/floors/x/bore',
    ]) {
      expect(kindAt(path)).toBeUndefined();
    }
  });

  it('is one and the same whichever kind of station, source or piece stands there', () => {
    const told = (path: string, form: Form): void => {
      const forms = fieldsAt(path);
      const kinds = new Set(forms.map((each) => (each.is === 'quantity' ? each.quantity.kind : each.is)));
      expect([path, kinds.size]).toEqual([path, 1]);
      if (form.is === 'part') for (const [key, field] of form.fields) told(`${path}/${key}`, field);
      if (form.is === 'choice') {
        for (const option of form.options.values()) {
          if (option.is === 'part') for (const [key, field] of option.fields) told(`${path}/${key}`, field);
        }
      }
      if (form.is === 'list') told(`${path}/0`, form.of);
    };
    if (bookForm.is === 'part') for (const [key, field] of bookForm.fields) told(`/${key}`, field);
  });
});

describe('the field at a place', () => {
  it('says what may stand there', () => {
    expect(fieldAt('/floors/0/role')).toEqual({ is: 'word', words: ['built on', 'bound for', 'other'] });
    expect(fieldAt('/line/stations/0/zones/0/sprayFraction')).toEqual({
      is: 'number',
      whole: false,
      least: 0,
      most: 1,
    });
    expect(fieldAt('/floors/0/supply/run/0/bore')).toEqual({
      is: 'quantity',
      quantity: { kind: 'length', above: 0 },
    });
    expect(fieldAt('/line/formats/0/product')).toMatchObject({ is: 'text', tag: { refersTo: ['product'] } });
  });
});

describe('the name of a place', () => {
  it.each([
    ['/floors/1/supply/run/0/bore', 'Larkmoor, run, 2 in run, bore'],
    ['/floors/0/supply/source/surface', 'Oxbow, source, surface'],
    ['/floors/1/supply/run/0/fittings/1/count', 'Larkmoor, run, 2 in run, fittings 2, count'],
    ['/line/stations/4/lanes/1/kv', 'fill, -Y12, kv'],
    ['/line/stations/1/zones/1/temperature', 'washer, caustic, temperature'],
    ['/agreement/rates/0/rate', 'agreement, rates 1, rate'],
    ['/floors/1/room/altitude', 'Larkmoor, room, altitude'],
    ['/floors/1/heat/power', 'Larkmoor, heat, power'],
    ['/floors/1/settings/0/preset', 'Larkmoor, settings 1, preset'],
  ])('%s is %s', (path, name) => expect(named(path)).toBe(name));
});

describe('tags', () => {
  it('are found with the thing that they stand on', () => {
    expect(tagPath(demo, '-Y12')).toBe('/line/stations/4/lanes/1');
    expect(tagPath(demo, 'LARKMOOR')).toBe('/floors/1');
    expect(tagPath(demo, 'nobody')).toBeUndefined();
    expect(tagsOf(demo)).toContainEqual({ tag: '+WASH.Z2', path: '/line/stations/1/zones/1', thing: 'zone' });
  });
});

describe('a JSON Pointer', () => {
  // RFC 6901, section 5, read from memory of the standard's example document
  const document = {
    foo: ['bar', 'baz'],
    '': 0,
    'a/b': 1,
    'c%d': 2,
    'e^f': 3,
    'g|h': 4,
    'i\\j': 5,
    'k"l': 6,
    ' ': 7,
    'm~n': 8,
  };
  it.each([
    ['/foo', ['bar', 'baz']],
    ['/foo/0', 'bar'],
    ['/a~1b', 1],
    ['/c%d', 2],
    ['/e^f', 3],
    ['/g|h', 4],
    ['/i\\j', 5],
    ['/k"l', 6],
    ['/ ', 7],
    ['/m~0n', 8],
  ])('%s of the example of RFC 6901 gives %j', (path, value) => {
    expect(valueAt(document, path)).toEqual(value);
    expect(pointerOf(stepsOf(path))).toBe(path);
  });
});

describe('the nearest word', () => {
  it('is one slip away, whichever slip it is', () => {
    const words = ['length', 'bore', 'roughness', 'rise', 'material'];
    expect(nearestWord('lenght', words)).toBe('length');
    expect(nearestWord('Bore', words)).toBe('bore');
    expect(nearestWord('roughnes', words)).toBe('roughness');
    expect(nearestWord('materiall', words)).toBe('material');
  });
  it('is none where nothing is near', () => {
    expect(nearestWord('xyz', ['length', 'bore'])).toBeUndefined();
    expect(nearestWord('', ['a'])).toBeUndefined();
    expect(nearestWord('x'.repeat(1000), ['length'])).toBeUndefined();
  });
});
