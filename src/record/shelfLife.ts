import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { fields, list, number, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { temperature } from '../words/temperature';
import { time } from '../words/time';
import { recordCaution } from './cautions';

const store = () => temperature({ min: { value: -40, unit: 'degC' }, max: { value: 60, unit: 'degC' } });
const kept = /* @__PURE__ */ fields({
  /** How long the food kept its quality, above zero. */
  life: time(),
  /** Of the store, -40 to 60 degC. */
  temperature: store(),
});
const schema = /* @__PURE__ */ fields({
  /** One or two of your own storage tests; of two, at least 1 degC apart. */
  tests: list('storage tests', kept, 1, 2),
  /** With one test: how many times longer the food keeps 10 degC cooler, 1 to 20. */
  q10: optional(number('Q10 from 1 to 20', { min: 1, max: 20 })),
  /** The store you ask about, -40 to 60 degC. */
  temperature: optional(store()),
});
export type ShelfLifeInput = Given<z.input<typeof schema>>;

/** How the life of a food goes with the temperature of its store. */
export interface ShelfLife {
  /** How many times longer the food keeps its quality 10 degC cooler. */
  readonly q10: number;
  /** How long it keeps at the temperature you asked about, in the unit of the first test. */
  readonly life?: Quantity<'time'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

type Asked = z.output<typeof schema>;
const definition = (of: string): Basis => ({
  of,
  kind: 'equation',
  source: 'labuza-1982',
  locator: 'definition of Q10',
});

/** The Q10 of two tests, or the one given with a single test. */
function factorOf({ tests, q10, temperature: asked }: Asked): number {
  const [first, second] = tests as [Asked['tests'][number], Asked['tests'][number]?];
  if (second === undefined) {
    if (asked === undefined) fail('MISSING', 'temperature', asked, 'the temperature of the store you ask about');
    return q10 ?? fail('MISSING', 'q10', q10, 'a second test, or the Q10 of the food from 1 to 20');
  }
  if (q10 !== undefined) fail('CONTRADICTION', 'q10', q10, 'two tests, or one test with a Q10');
  const [cooler, warmer] = [first, second].sort(
    (a, b) => valueIn(a.temperature, 'degC') - valueIn(b.temperature, 'degC'),
  );
  const apart =
    valueIn((warmer as typeof first).temperature, 'degC') - valueIn((cooler as typeof first).temperature, 'degC');
  if (apart < 1)
    fail('CONTRADICTION', 'tests[1].temperature', second.temperature.value, 'at least 1 degC from the other test');
  const times = valueIn((cooler as typeof first).life, 'day') / valueIn((warmer as typeof first).life, 'day');
  const value = times ** (10 / apart);
  const [least, most] = asked === undefined ? [0.01, 100] : [1, 20];
  if (!(value >= least && value <= most)) {
    fail('OUT_OF_RANGE', 'tests[0].life', first.life.value, `lives whose Q10 is from ${least} to ${most}`);
  }
  return value;
}

/**
 * How long a food keeps its quality at another temperature: from two of your own storage tests, or from one test and a
 * Q10 that you know.
 *
 * Q10 = (life cooler / life warmer)^(10 / (T warmer - T cooler)); life = life of the test x Q10^((T test - T) / 10),
 * degC.
 *
 * @returns `q10`, and `life` where you ask about a temperature
 * @throws StillroomError CONTRADICTION for two tests less than 1 degC apart or a Q10 with two tests, MISSING, OUT_OF_RANGE
 *
 * Source: Labuza, Shelf-Life Dating of Foods, definition of Q10 (recalled).
 *
 * @example
 * ```ts
 * import { shelfLife } from 'stillroom/record';
 *
 * const tests = [
 *   { life: '20 weeks', temperature: '20 degC' },
 *   { life: '10 weeks', temperature: '30 degC' },
 * ] as const;
 * shelfLife({ tests }).q10; // ≈ 2.000
 * shelfLife({ tests: [{ life: '1 week', temperature: '100 degF' }], q10: 2, temperature: '70 degF' }).life.value; // ≈ 3.17
 * ```
 */
export function shelfLife(input: ShelfLifeInput): ShelfLife {
  const asked = readInput(schema, input);
  const q10 = factorOf(asked);
  const { tests, temperature: other } = asked;
  const [{ life, temperature: at }] = tests as [Asked['tests'][number]];
  const cautions = [recordCaution('one-temperature-rule'), recordCaution('quality-not-safety'), caution('estimate')];
  if (other === undefined) return answer({ q10, basis: [definition('q10')], cautions });
  const apart = valueIn(at, 'degC') - valueIn(other, 'degC');
  return answer({
    q10,
    life: quantityIn(life.value * q10 ** (apart / 10), life.unit, life.unit),
    basis: [definition('life')],
    cautions,
  });
}
