import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { fields, list, optional, readInput, share } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { practiceBasis } from '../../sources/table';
import { mass } from '../../words/mass';
import { time } from '../../words/time';
import { measured } from '../basis';
import { caution } from '../cautions';
import { numberOf, practice } from '../rows';

const schema = /* @__PURE__ */ fields({
  /** 2 to 10,000 weighings; weigh before the pieces warm up in moist air. */
  weighings: list(
    'the weighings, two or more',
    fields({
      /** Since drying began: 0 or more, each later than the last. */
      time: time({ min: { value: 0, unit: 's' } }),
      /** What the scale shows: a mass above zero. */
      mass: mass(),
    }),
    2,
    10_000,
  ),
  /** The loss between the last two weighings that counts as none, a share of the mass: above 0 to 0.05; 0.002 if not given. */
  tolerance: optional(share({ above: 0, max: 0.05 })),
});
export type DrynessByWeighingInput = z.input<typeof schema>;

export interface DrynessByWeighing {
  /** `too soon` where the last two weighings are less than an hour apart. */
  readonly verdict: 'dry' | 'not dry' | 'too soon';
  /** Lost between the last two weighings. */
  readonly lostMass: Quantity<'mass'>;
  /** The same as a share of the mass. */
  readonly lostShare: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** Whether a load is dry, by weighing it again and again: another hour or more takes off nothing that a scale can show. */
export function drynessByWeighing(input: DrynessByWeighingInput): DrynessByWeighing {
  const { weighings, tolerance = numberOf(practice('steady-loss')) } = readInput(schema, input);
  const { unit } = (weighings[0] as (typeof weighings)[number]).mass;
  const hours = weighings.map((weighing) => valueIn(weighing.time, 'h'));
  const masses = weighings.map((weighing) => valueIn(weighing.mass, unit));
  for (let i = 1; i < weighings.length; i++) {
    if ((hours[i] as number) <= (hours[i - 1] as number)) {
      fail('CONTRADICTION', `weighings[${i}].time`, input.weighings[i]?.time, 'a time after the weighing before');
    }
    if ((masses[i] as number) > (masses[i - 1] as number)) {
      const expected = 'at most the mass before; drying only takes away';
      fail('CONTRADICTION', `weighings[${i}].mass`, input.weighings[i]?.mass, expected);
    }
  }
  const end = weighings.length - 1;
  const [before, after] = [masses[end - 1] as number, masses[end] as number];
  const lost = before - after;
  const apart = (hours[end] as number) - (hours[end - 1] as number);
  const tooSoon = apart < numberOf(practice('steady-hours'));
  return answer({
    verdict: lost / before > tolerance ? 'not dry' : tooSoon ? 'too soon' : 'dry',
    lostMass: { value: lost, unit },
    lostShare: lost / before,
    basis: [
      measured('lostMass', 'the weighings'),
      practiceBasis('verdict', 'dry when an hour or more takes off no more than the tolerance'),
    ],
    cautions: [caution('freeze-dried-must-be-dry')],
  });
}
