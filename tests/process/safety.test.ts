/** What must hold for every question: the properties that keep a wrong number from being served. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import { formName, nameOf } from '../../src/foods/tables';
import { type TestedProcess, type TestedProcessInput, testedProcess } from '../../src/process/index';
import { LISTED_JARS, processRows } from '../../src/process/tables';
import type { NotTested } from '../../src/sources/no';
import { forms, names } from './asked';
import { printedLines } from './printed';

const METHODS = ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam'] as const;
const jars = [
  'half-pint',
  'pint',
  'quart',
  'half-gallon',
  '4 oz',
  '12 oz',
  '24 oz',
  '28 oz',
  '250 mL',
  '500 mL',
  '1 L',
  '3 quarts',
];
const feet = fc.double({ min: -1400, max: 16400, noNaN: true });

const random = fc.record(
  {
    food: fc.oneof(
      { weight: 6, arbitrary: fc.constantFrom(...names) },
      {
        weight: 2,
        arbitrary: fc.tuple(fc.constantFrom(...names), fc.constantFrom(...forms)).map((words) => words.join(' ')),
      },
    ),
    form: fc.constantFrom(...forms),
    pack: fc.constantFrom('hot', 'raw', 'not stated'),
    jar: fc.constantFrom(...jars),
    method: fc.constantFrom(...METHODS),
    elevation: feet.map((value) => ({ value, unit: 'ft' })),
    alternative: fc.constantFrom('a', 'b', 'c'),
  },
  { requiredKeys: ['food', 'jar', 'method', 'elevation'] },
);
/** A question near one of the rows: any of its words may be another. */
const likely = fc
  .record({
    row: fc.constantFrom(...processRows),
    instead: random,
    swap: fc.record({
      food: fc.nat(4),
      form: fc.nat(4),
      pack: fc.nat(4),
      jar: fc.nat(2),
      method: fc.nat(2),
      alternative: fc.nat(1),
    }),
  })
  .map(({ row, instead, swap }) => ({
    food: swap.food === 0 ? instead.food : nameOf(row.food),
    form: swap.form === 0 ? instead.form : formName(row.form),
    pack: swap.pack === 0 ? instead.pack : (row.pack ?? 'not stated'),
    jar: swap.jar === 0 ? instead.jar : (row.jars[0] as string),
    method: swap.method === 0 ? instead.method : row.method,
    elevation: instead.elevation,
    ...(swap.alternative === 0 && instead.alternative !== undefined ? { alternative: instead.alternative } : {}),
  }));
const question = fc.oneof(
  { weight: 1, arbitrary: random },
  { weight: 4, arbitrary: likely },
) as fc.Arbitrary<TestedProcessInput>;

/** The answer, or undefined where the question is not one. */
function ask(input: TestedProcessInput): TestedProcess | NotTested | undefined {
  try {
    return testedProcess(input);
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    return undefined;
  }
}
const answered = (input: TestedProcessInput): TestedProcess | undefined => {
  const answer = ask(input);
  return answer?.tested === true ? answer : undefined;
};

/** A question that the tables answer, at any elevation. */
const line = fc.constantFrom(...printedLines);

describe('against the printed rows', () => {
  test('at any elevation a line is served as printed for its band, a fraction above an edge with the next band', () => {
    expect(printedLines.length).toBeGreaterThan(500);
    fc.assert(
      fc.property(line, feet, ({ question, edges }, elevation) => {
        const edge = edges.find(({ feet }, index) => index % 2 === 1 && elevation <= feet);
        const answer = ask({ ...question, elevation: { value: elevation, unit: 'ft' } });
        if (edge === undefined || !edge.tested) expect(answer?.tested).toBe(false);
        else {
          expect(answer).toMatchObject({ tested: true, minutes: edge.minutes });
          if (edge.pressure !== undefined)
            expect(answer).toMatchObject({ pressure: { value: edge.pressure, unit: 'psi' } });
        }
      }),
      { numRuns: 1500 },
    );
  });

  test('no answer is below a printed value for its food, form, pack and any jar of its size or smaller', () => {
    let served = 0;
    fc.assert(
      fc.property(question, (input) => {
        const answer = answered(input);
        if (answer === undefined) return;
        served += 1;
        const { value } = input.elevation as { value: number };
        const method = answer.method === 'atmospheric-steam' ? 'boiling-water' : answer.method;
        // the rows themselves, read without the library's lookup
        const rows = processRows.filter(
          (row) =>
            formName(row.form) === answer.form &&
            row.recipe === answer.recipe &&
            row.method === method &&
            (row.pack ?? 'not stated') === answer.pack &&
            row.headspace === answer.headspace.value &&
            (answer.alternative === undefined || row.alternative === answer.alternative),
        );
        expect(rows.length).toBeGreaterThan(0);
        const ends = { 4: [1000, 3000, 6000, 1e9], 3: [1000, 6000, 1e9] } as Record<number, number[]>;
        const matching = rows.filter((row) => {
          if (method !== 'boiling-water') {
            const upTo = method === 'dial-gauge' ? [2000, 4000, 6000, 8000] : [1000, 1e9];
            const psi = row.psi?.[upTo.findIndex((end) => value <= end)];
            return row.minutes === answer.minutes && psi === answer.pressure?.value && row.obtained !== 'memory';
          }
          const minutes = row.minutes as readonly number[];
          const band = (ends[minutes.length] as number[]).findIndex((end) => value <= end);
          return minutes[band] === answer.minutes && row.obtained !== 'memory' && row.refused?.[band] === undefined;
        });
        // what is served is a printed line of that form, at that place, read in a copy, for that jar or a larger one
        expect(matching.length).toBeGreaterThan(0);
        const named = LISTED_JARS.indexOf(answer.jar as 'pint');
        if (named >= 0) {
          const largest = Math.max(...matching.flatMap(({ jars }) => jars.map((jar) => LISTED_JARS.indexOf(jar))));
          expect(largest).toBeGreaterThanOrEqual(named);
        }
      }),
      { numRuns: 2000 },
    );
    expect(served).toBeGreaterThan(300);
  });
});

describe('never', () => {
  const lowAcid =
    'green beans,snap beans,lima beans,corn,sweet corn,carrots,beets,asparagus,okra,peas,mushrooms,potatoes,sweet potatoes,spinach,kale,pumpkin,winter squash,peppers,mixed vegetables,succotash,soup,beef,pork,venison,chicken,rabbit,sausage,meat,broth,chili,clams,crab,fish,salmon,trout,oysters,tuna,smoked salmon,spaghetti sauce,baked beans,kidney beans,mincemeat,Mexican tomato sauce,tomatoes with okra'.split(
      ',',
    );
  const acidified = /pickle|relish|salad|salsa/;

  test('is low-acid food answered without pressure, nor under 10 psi', () => {
    let served = 0;
    fc.assert(
      fc.property(fc.constantFrom(...lowAcid), question, fc.boolean(), (food, input, open) => {
        const answer = answered({ ...input, food, ...(open ? { form: undefined, pack: undefined } : {}) });
        if (answer === undefined || acidified.test(answer.form)) return;
        served += 1;
        expect(['dial-gauge', 'weighted-gauge']).toContain(answer.method);
        expect(answer.pressure?.value).toBeGreaterThanOrEqual(10);
        expect(answer.cautions.map(({ id }) => id)).toContain('low-acid-botulism');
      }),
      { numRuns: 3000 },
    );
    expect(served).toBeGreaterThan(50);
  });

  test('is a low-acid row reached by boiling water or steam, whatever the words', () => {
    const rows = processRows.filter(
      ({ psi }) => psi !== undefined && Math.min(...psi.map((value) => value ?? 99)) >= 10,
    );
    fc.assert(
      fc.property(
        fc.constantFrom(...rows),
        fc.constantFrom('boiling-water', 'atmospheric-steam'),
        feet,
        (row, method, elevation) => {
          const answer = answered({
            food: nameOf(row.food),
            form: formName(row.form),
            pack: row.pack ?? 'not stated',
            jar: row.jars[0] as string,
            method: method as 'boiling-water',
            elevation: { value: elevation, unit: 'ft' },
          });
          // tomatoes have both: theirs is the acidified line
          if (answer !== undefined) expect(answer.acid?.required).toBe(true);
        },
      ),
    );
  });

  test('is food in no table answered with a time', () => {
    const known = new Set(names.map((name) => name.toLowerCase()));
    const text = fc.oneof(
      fc.string({ maxLength: 30 }),
      fc.constantFrom(
        'dragon fruit',
        'jackfruit',
        'kelp',
        'tofu',
        'bok choy',
        'ham',
        'kiwi',
        'avocado',
        'acorn',
        'lard',
        'passion fruit',
        'star fruit',
      ),
    );
    fc.assert(
      fc.property(text, question, (food, input) => {
        if (known.has(food.trim().toLowerCase())) return;
        expect(answered({ ...input, food })).toBeUndefined();
      }),
      { numRuns: 400 },
    );
  });

  test('is food that is not canned answered with a time', () => {
    const notCanned =
      'banana,coconut,papaya,persimmon,date,white peach,white nectarine,elderberry,pumpkin butter,summer squash,broccoli,eggplant,cheese,egg,pesto,wild mushroom,refried beans,lettuce,melon,bread in a jar,blue crab,snow peas,freezer jam'.split(
        ',',
      );
    fc.assert(
      fc.property(fc.constantFrom(...notCanned), question, (food, input) => {
        // summer squash relish is a product with a printed process of its own
        if (food === 'summer squash' && input.form === 'relish') return;
        expect(ask({ ...input, food })?.tested ?? false).toBe(false);
        expect(answered({ ...input, food: `${food} ${input.form ?? 'jam'}`, form: undefined })).toBeUndefined();
      }),
      { numRuns: 1000 },
    );
  });

  test('is a tomato, fig, Asian pear, tomatillo or crab process given without its acid, twice', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('tomato', 'fig', 'Asian pear', 'tomatillo', 'crab', 'green tomato'),
        question,
        (food, input) => {
          const answer = answered({ ...input, food });
          if (answer === undefined) return;
          expect(answer.acid).toMatchObject({ required: true });
          expect(answer.cautions[0]).toMatchObject({
            id: 'acid-required',
            text: expect.stringContaining(answer.acid?.text ?? '-'),
          });
          expect(answer.basis.map(({ of: what }) => what)).toContain('acid');
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('is a figure recalled from memory served', () => {
    for (const row of processRows.filter(({ obtained }) => obtained === 'memory')) {
      const answer = testedProcess({
        food: nameOf(row.food),
        form: formName(row.form),
        pack: row.pack as 'hot',
        jar: row.jars[0] as string,
        method: row.method,
        elevation: '0 ft',
        ...(row.alternative === undefined ? {} : { alternative: row.alternative as 'c' }),
      });
      expect(answer).toMatchObject({
        tested: false,
        reason: { code: 'figure recalled', text: expect.stringContaining('recalled') },
        instead: expect.any(Array),
      });
    }
  });
});

describe('as elevation rises', () => {
  test('minutes and pressure never fall, and a refusal stays one', () => {
    fc.assert(
      fc.property(line, feet, feet, ({ question }, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)].map((value) =>
          ask({ ...question, elevation: { value, unit: 'ft' } }),
        );
        if (high?.tested !== true) return;
        if (low?.tested !== true) {
          // only the two cells that could not be read stand below one that was
          expect(question.food).toBe('fish, smoked');
          return;
        }
        expect(high.minutes).toBeGreaterThanOrEqual(low.minutes);
        expect(high.pressure?.value ?? 0).toBeGreaterThanOrEqual(low.pressure?.value ?? 0);
      }),
      { numRuns: 1000 },
    );
  });

  test('the answer does not depend on the unit of the elevation', () => {
    fc.assert(
      fc.property(line, fc.integer({ min: 0, max: 16400 }), ({ question }, value) => {
        const inFeet = ask({ ...question, elevation: { value, unit: 'ft' } });
        const inInches = ask({ ...question, elevation: { value: value * 12, unit: 'in' } });
        expect(inInches).toEqual(inFeet);
      }),
      { numRuns: 300 },
    );
  });
});

test('every answer carries its basis and cautions, and no figure is NaN', () => {
  fc.assert(
    fc.property(question, (input) => {
      const answer = ask(input);
      if (answer === undefined) return;
      expect(answer.cautions.length).toBeGreaterThan(1);
      expect(JSON.stringify(answer)).not.toMatch(/null|NaN|undefined/);
      if (answer.tested) {
        expect(answer.minutes).toBeGreaterThan(0);
        expect(answer.basis.map((line) => line.of)).toContain('headspace');
        expect(answer.basis.map((line) => line.note)).toContain('elevation bands');
        for (const { of: path } of answer.basis) expect(answer).toHaveProperty(path);
        for (const { kind } of answer.basis) expect(['published', 'equation']).toContain(kind);
      }
    }),
    { numRuns: 1500 },
  );
});
