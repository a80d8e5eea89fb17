import type * as z from 'zod/mini';
import jerkyTable from '../../data/drying/jerky.json';
import { handOut } from '../common/handOut';
import { choice, fields, length, optional, readInput, temperature, time } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, joinBasis, type Refusal } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { caution } from './cautions';

interface JerkyRow extends Sourced {
  readonly step: string;
  readonly temperature_degF: number | readonly [number, number] | null;
  readonly time: string | null;
  readonly offered: boolean;
}

const rows = asTable<JerkyRow>(jerkyTable).rows.filter(({ offered }) => offered);
const step = (start: string): JerkyRow => rows.find((row) => row.step.startsWith(start)) as JerkyRow;

const MEAT = step('internal temperature of meat');
const POULTRY = step('internal temperature of poultry');
const DRYER = step('dryer air temperature during drying');
const HOT_DRYER = step('dryer air temperature, Wisconsin');
const OVEN = step('post-drying oven');
/** From the rows' `time`: at least 6 h in the hot dryer, 10 min in the oven, strips of 1/4 in or less. */
const HOT_DRYER_HOURS = 6;
const OVEN_MINUTES = 10;
const OVEN_STRIP: Quantity<'length'> = { value: 0.25, unit: 'in' };

const degF = (row: JerkyRow): number => row.temperature_degF as number;

const schema = fields({
  meat: choice('the meat', ['meat', 'beef', 'pork', 'lamb', 'venison', 'game', 'poultry', 'chicken', 'turkey', 'duck']),
  heating: optional(choice('when the meat itself is heated', ['before', 'after', 'none'])),
  internalTemperature: optional(temperature({ max: { value: 300, unit: 'degF' } })),
  dryerTemperature: temperature({ max: { value: 300, unit: 'degF' } }),
  dryingTime: optional(time()),
  oven: optional(fields({ temperature: temperature({ max: { value: 600, unit: 'degF' } }), time: time() })),
  thickness: optional(length()),
});
export type JerkyInput = z.input<typeof schema>;

/** A way to make jerky whose heating step is printed. */
export interface JerkySteps {
  readonly tested: true;
  /** What the meat must reach inside before it dries, by a thermometer. */
  readonly internalTemperature?: Quantity<'temperature'>;
  readonly dryer: { readonly low: Quantity<'temperature'>; readonly high?: Quantity<'temperature'> };
  readonly dryAtLeast?: Quantity<'time'>;
  /** The oven after drying. */
  readonly oven?: { readonly temperature: Quantity<'temperature'>; readonly time: Quantity<'time'> };
  readonly thickestStrip?: Quantity<'length'>;
  readonly keeps: { readonly room: string; readonly refrigerator: string; readonly freezer: string };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
export type Jerky = JerkySteps | Refusal;

const quantity = (value: number): Quantity<'temperature'> => ({ value, unit: 'degF' });

/**
 * Whether a way of making jerky holds the heating step that makes it safe, and the printed steps; refused otherwise.
 *
 * Either the meat reaches 160 degF inside (poultry 165 degF) before it dries at 130 to 140 degF; or strips of 1/4 in
 * or less dry at 145 degF or above for at least 6 hours and then stand 10 minutes in an oven at 275 degF (not for
 * poultry). Drying alone is refused at every temperature, and old directions at 120 degF are never offered.
 *
 * @param input.meat - `beef`, `pork`, `lamb`, `venison`, `game`, `meat`; or `poultry`, `chicken`, `turkey`, `duck`
 * @param input.heating - `before` drying, `after` it, or `none`; refused if not given
 * @param input.internalTemperature - what the meat reaches inside before drying; needed with `before`
 * @param input.dryerTemperature - of the dryer's air
 * @param input.dryingTime - needed with `after`
 * @param input.oven - `temperature` and `time` of the oven after drying; needed with `after`
 * @param input.thickness - of the strips; needed with `after`
 * @returns the printed steps with `tested: true`, or a refusal with its reason and what to do instead
 * @throws StillroomError UNKNOWN_NAME, WRONG_DIMENSION
 *
 * @example
 * ```ts
 * import { jerky } from 'stillroom/drying';
 *
 * jerky({ meat: 'beef', dryerTemperature: '140 degF' }).tested; // => false
 * jerky({ meat: 'beef', heating: 'before', internalTemperature: '160 degF', dryerTemperature: '140 degF' }).tested; // => true
 * ```
 */
export function jerky(input: JerkyInput): Jerky {
  const given = readInput(schema, input);
  const { heating = 'none', dryerTemperature: dryer } = given;
  const poultry = ['poultry', 'chicken', 'turkey', 'duck'].includes(given.meat);
  const inside = poultry ? POULTRY : MEAT;
  const cautions = [caution('jerky-heat-first'), caution('jerky-keeps-briefly'), caution('follow-local-guidance')];
  const at = (value: Quantity<'temperature'> | undefined, least: number): boolean =>
    value !== undefined && valueIn(value, 'degF') >= least - 1e-9;
  const before = `heat the ${poultry ? 'poultry' : 'meat'} to ${degF(inside)} degF inside before it dries`;
  const refuse = (reason: string, instead: string): Refusal => ({
    tested: false,
    reason,
    instead,
    basis: [
      basisOf(inside, 'inside temperature before drying'),
      basisOf(HOT_DRYER, 'dryer'),
      basisOf(OVEN, 'oven after drying'),
    ],
    cautions,
  });
  const keeping = ['storage, sealed, room', 'storage, refrigerator', 'storage, freezer'].map(step);
  const [room, refrigerator, freezer] = keeping.map((row) => row.time as string) as [string, string, string];
  const common = { tested: true, keeps: { room, refrigerator, freezer }, cautions } as const;
  if (heating === 'none')
    return handOut(refuse('drying without a heating step leaves dangerous bacteria alive in the meat', before));
  if (heating === 'before') {
    const [low, high] = DRYER.temperature_degF as readonly [number, number];
    if (!at(given.internalTemperature, degF(inside))) {
      return handOut(refuse(`the meat must be known to reach ${degF(inside)} degF inside before it dries`, before));
    }
    if (!at(dryer, low)) {
      return handOut(
        refuse(`a dryer below ${low} degF is too slow to dry before the meat spoils`, `dry at ${low} to ${high} degF`),
      );
    }
    return handOut({
      ...common,
      internalTemperature: quantity(degF(inside)),
      dryer: { low: quantity(low), high: quantity(high) },
      basis: joinBasis(
        [basisOf(inside, 'inside temperature before drying'), basisOf(DRYER, 'temperature of the dryer')],
        keeping.map((row) => basisOf(row, 'keeping')),
      ),
    });
  }
  if (poultry)
    return handOut(refuse('the oven step after drying is printed for strips of meat, not for poultry', before));
  if (given.thickness === undefined || valueIn(given.thickness, 'in') > OVEN_STRIP.value + 1e-9) {
    return handOut(
      refuse('the oven step after drying is for strips of 1/4 in or less', `cut them thinner, or ${before}`),
    );
  }
  const longEnough = given.dryingTime !== undefined && valueIn(given.dryingTime, 'h') >= HOT_DRYER_HOURS - 1e-9;
  if (!at(dryer, degF(HOT_DRYER)) || !longEnough) {
    return handOut(
      refuse(
        `before the oven step the strips dry at ${degF(HOT_DRYER)} degF or above for at least ${HOT_DRYER_HOURS} hours`,
        before,
      ),
    );
  }
  const ovenTime = given.oven === undefined ? 0 : valueIn(given.oven.time, 'min');
  if (!at(given.oven?.temperature, degF(OVEN)) || ovenTime < OVEN_MINUTES - 1e-9) {
    return handOut(refuse(`the oven step is ${OVEN_MINUTES} minutes at ${degF(OVEN)} degF`, before));
  }
  return handOut({
    ...common,
    dryer: { low: quantity(degF(HOT_DRYER)) },
    dryAtLeast: { value: HOT_DRYER_HOURS, unit: 'h' },
    oven: { temperature: quantity(degF(OVEN)), time: { value: OVEN_MINUTES, unit: 'min' } },
    thickestStrip: OVEN_STRIP,
    basis: joinBasis(
      [basisOf(HOT_DRYER, 'temperature of the dryer'), basisOf(OVEN, 'oven after drying')],
      keeping.map((row) => basisOf(row, 'keeping')),
    ),
  });
}
