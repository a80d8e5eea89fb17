import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { food, form } from '../../foods/fields';
import { choice, fields, optional, readInput } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { type Instead, type NotTested, notTested } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { length } from '../../words/length';
import { temperature } from '../../words/temperature';
import { time } from '../../words/time';
import { caution } from '../cautions';
import { formAsked } from '../pantry';
import { figure } from '../rows';
import {
  DRYER,
  HOT_DRYER,
  keeping,
  keepingBasis,
  longEnough,
  MEAT,
  OVEN,
  POULTRY,
  printed,
  STRIP,
  within,
} from './jerkySteps';
import type { JerkyRow } from './tables';

const anyHeat = () => temperature({ max: { value: 300, unit: 'degF' } });
const schema = /* @__PURE__ */ fields({
  /** The meat: a food of the pantry, such as beef, venison, chicken. */
  food: food(),
  /** Its cut: `strips`, `slices`, `ground`. */
  form: optional(form()),
  /** When you heat the meat itself: `before` it dries, `after`, or `none` (if not given). */
  heating: optional(choice('when the meat itself is heated', ['before', 'after', 'none'])),
  /** What the meat reaches inside before it dries, up to 300 degF; needed with `before`. */
  internalTemperature: optional(anyHeat()),
  /** Of the air in the dryer, up to 300 degF. */
  dryerTemperature: anyHeat(),
  /** How long it dries; needed with `after`. */
  dryingTime: optional(time()),
  /** The oven after drying; needed with `after`. */
  oven: optional(
    fields({
      /** Of the oven, up to 600 degF. */
      temperature: temperature({ max: { value: 600, unit: 'degF' } }),
      /** How long it is in the oven. */
      time: time(),
    }),
  ),
  /** Of the strips; needed with `after`. */
  thickness: optional(length()),
});
export type JerkyInput = z.input<typeof schema>;

/** A way to make jerky whose heating step is printed. */
export interface JerkySteps {
  /** The heating step is one that these tables hold. */
  readonly tested: true;
  /** What the meat must reach inside before it dries, by a thermometer. */
  readonly internalTemperature?: Quantity<'temperature'>;
  /** Air of the dryer. */
  readonly dryerTemperature: {
    /** The least that is printed. */
    readonly low: Quantity<'temperature'>;
    /** The most that is printed. */
    readonly high: Quantity<'temperature'>;
  };
  /** The least time in the dryer. */
  readonly dryAtLeast?: Quantity<'time'>;
  /** The oven after drying. */
  readonly oven?: {
    /** Of the oven. */
    readonly temperature: Quantity<'temperature'>;
    /** How long it is in the oven. */
    readonly time: Quantity<'time'>;
  };
  /** The thickest strip that the steps are for. */
  readonly thickestStrip?: Quantity<'length'>;
  /** How long it keeps. */
  readonly keepsFor: readonly {
    /** Where: `shelf` (sealed, at room temperature), `refrigerator` or `freezer`. */
    readonly place: string;
    /** How long, in words. */
    readonly text: string;
  }[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}
/** The printed steps, or why these tables hold none. */
export type Jerky = JerkySteps | NotTested;

/**
 * Whether a way of making jerky has the heating step that makes it safe, with the printed steps; without it, a no.
 *
 * Either the meat reaches 160 degF inside (poultry 165 degF) before it dries at 130 to 140 degF; or strips of 1/4 in
 * or less dry at 145 to 155 degF for at least 6 hours and then spend 10 minutes in an oven at 275 degF (not for
 * poultry). Drying alone is refused at every temperature; so is a dryer or an oven hotter than printed as well as a
 * cooler one (a hot dryer hardens the outside over a wet middle), and any food that is not fresh meat or poultry. Old
 * directions at 120 degF are never offered.
 *
 * Sources: USDA Food Safety and Inspection Service, Jerky and Food Safety; University of Wisconsin Extension.
 *
 * @returns the printed steps with `tested: true`, or `tested: false` with the reason and what to do instead
 * @throws StillroomError UNKNOWN_NAME, WRONG_DIMENSION
 *
 * @example
 * ```ts
 * import { jerky } from 'stillroom/drying';
 *
 * jerky({ food: 'beef', dryerTemperature: '140 degF' }).tested; // => false
 * jerky({ food: 'beef', heating: 'before', internalTemperature: '160 degF', dryerTemperature: '140 degF' }).tested; // => true
 * ```
 */
export function jerky(input: JerkyInput): Jerky {
  const given = readInput(schema, input);
  const asked: Asked = { ...given, form: formAsked(given.food, given.form, input.form) };
  const inside = insideOf(asked);
  if (inside === undefined) return answer(noMeat(asked));
  if (given.heating === 'before') return answer(heatedBefore(asked, inside));
  if (given.heating === 'after') return answer(heatedAfter(asked, inside));
  return answer(
    refusal(inside, 'no-heating', 'drying without a heating step leaves dangerous bacteria alive in the meat', [
      heatFirst(inside),
    ]),
  );
}

type Asked = Omit<z.output<typeof schema>, 'form'> & { readonly form: string | undefined };

/** The row of the inside temperature; poultry goes before meat where a food is both. */
const insideOf = ({ food: { id } }: Asked): JerkyRow | undefined =>
  [POULTRY, MEAT].find(({ foods = [] }) => foods.includes(id));
const degF = (value: number): Quantity<'temperature'> => ({ value, unit: 'degF' });
const nounOf = (inside: JerkyRow): string => (inside === POULTRY ? 'poultry' : 'meat');
const heatFirst = (inside: JerkyRow): Instead => ({
  text: `heat the ${nounOf(inside)} to ${printed(inside).least} degF inside before it dries`,
});

const cautions = () => [caution('jerky-heat-first'), caution('jerky-keeps-briefly'), caution('follow-local-guidance')];

function noMeat({ food: { name } }: Asked): NotTested {
  return notTested({
    code: 'not-meat',
    text: `these tables hold jerky of fresh meat and poultry only, and none of ${name}`,
    instead: [{ text: 'keep it refrigerated or frozen', keep: 'freezer' }],
    basis: [basisOf(MEAT, 'reason', 'what the heating step is for'), basisOf(POULTRY, 'reason')],
    cautions: cautions(),
  });
}

const refusal = (inside: JerkyRow, code: string, text: string, instead: readonly Instead[]): NotTested =>
  notTested({
    code,
    text,
    instead,
    basis: [
      basisOf(inside, 'reason', 'inside temperature before drying'),
      basisOf(DRYER, 'reason', 'dryer, meat heated before'),
      basisOf(HOT_DRYER, 'reason', 'dryer, meat heated afterward'),
      basisOf(OVEN, 'reason', 'oven after drying'),
    ],
    cautions: cautions(),
  });

/** A dryer that is cooler or hotter than the row prints. */
function wrongDryer({ dryerTemperature }: Asked, inside: JerkyRow, row: JerkyRow): NotTested {
  const { least, most } = printed(row);
  const instead = [{ text: `dry at ${least} to ${most} degF` }];
  return valueIn(dryerTemperature, 'degF') < least
    ? refusal(
        inside,
        'dryer-too-cool',
        `a dryer below ${least} degF is too slow: the meat spoils before it dries`,
        instead,
      )
    : refusal(
        inside,
        'dryer-too-hot',
        `no row of these tables dries jerky above ${most} degF: the outside hardens before the middle is dry`,
        instead,
      );
}

const dryerOf = (row: JerkyRow) => ({ low: degF(printed(row).least), high: degF(printed(row).most) });

function heatedBefore(asked: Asked, inside: JerkyRow): Jerky {
  const { least } = printed(inside);
  if (!within(asked.internalTemperature, inside)) {
    return refusal(
      inside,
      'inside-too-cool',
      `measure that the ${nounOf(inside)} reaches ${least} degF inside before it dries`,
      [heatFirst(inside)],
    );
  }
  if (!within(asked.dryerTemperature, DRYER)) return wrongDryer(asked, inside, DRYER);
  return {
    tested: true,
    internalTemperature: degF(least),
    dryerTemperature: dryerOf(DRYER),
    keepsFor: keeping(),
    basis: [basisOf(inside, 'internalTemperature'), basisOf(DRYER, 'dryerTemperature'), ...keepingBasis()],
    cautions: cautions(),
  };
}

/** Why the oven step does not fit this meat and cut, before any temperature is looked at. */
function notForOven({ form: cut, thickness }: Asked, inside: JerkyRow): NotTested | undefined {
  const before = heatFirst(inside);
  if (inside === POULTRY) {
    return refusal(
      inside,
      'oven-not-for-poultry',
      'the oven step after drying is for strips of meat here, not for poultry',
      [before],
    );
  }
  const forms = [HOT_DRYER, OVEN].every(({ forms: cuts = [] }) => cut === undefined || cuts.includes(cut));
  if (!forms || thickness === undefined || valueIn(thickness, 'in') > STRIP.value + 1e-9) {
    return refusal(inside, 'oven-for-thin-strips', 'the oven step after drying is for strips of 1/4 in or less', [
      { text: 'cut it into strips of 1/4 in or less' },
      before,
    ]);
  }
  return undefined;
}

function heatedAfter(asked: Asked, inside: JerkyRow): Jerky {
  const unfit = notForOven(asked, inside);
  if (unfit !== undefined) return unfit;
  if (!within(asked.dryerTemperature, HOT_DRYER)) return wrongDryer(asked, inside, HOT_DRYER);
  const dryAtLeast = figure(HOT_DRYER.atLeast);
  const { least } = printed(HOT_DRYER);
  const before = heatFirst(inside);
  if (!longEnough(asked.dryingTime, HOT_DRYER)) {
    const text = `before the oven step the strips dry at ${least} degF or above for at least ${dryAtLeast.value} hours`;
    return refusal(inside, 'dried-too-briefly', text, [before]);
  }
  const ovenTime = figure(OVEN.atLeast);
  if (!within(asked.oven?.temperature, OVEN) || !longEnough(asked.oven?.time, OVEN)) {
    const text = `the oven step is ${ovenTime.value} minutes at ${printed(OVEN).least} degF`;
    return refusal(inside, 'wrong-oven', text, [before]);
  }
  return {
    tested: true,
    dryerTemperature: dryerOf(HOT_DRYER),
    dryAtLeast,
    oven: { temperature: degF(printed(OVEN).least), time: ovenTime },
    thickestStrip: STRIP,
    keepsFor: keeping(),
    basis: [
      basisOf(HOT_DRYER, 'dryerTemperature'),
      basisOf(HOT_DRYER, 'dryAtLeast'),
      basisOf(OVEN, 'oven'),
      basisOf(OVEN, 'thickestStrip'),
      ...keepingBasis(),
    ],
    cautions: cautions(),
  };
}
