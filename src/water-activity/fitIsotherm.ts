import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { fields, list, mass, name, optional, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, measured } from '../sources/basis';
import { moisture } from '../words/shares';
import { activityCaution } from './cautions';
import { equationNamed } from './isothermEquations';
import { formBasis } from './isothermTables';
import { saturatedSaltHumidity } from './saturatedSaltHumidity';

const MOST = 30;
const schema = /* @__PURE__ */ fields({
  /** Moisture of the powder at the start, wet basis, above 0 and below 1 (see `moistureByWeighing`). */
  moisture: moisture({ above: 0, below: 1 }),
  /** Temperature of the jars; 25 degC when left out. */
  temperature: optional(temperature()),
  /** Step of the scale; 0.01 g when left out. */
  scaleStep: optional(mass()),
  /** 2 to 30 dishes, each closed up over a saturated salt until its mass stayed the same. */
  dishes: list(
    'dishes over saturated salts',
    fields({
      /** The salt: `NaCl`, `magnesium chloride` ... (see `saturatedSaltHumidity`). */
      solute: name('a salt such as "NaCl" or "magnesium chloride"'),
      /** The powder when it went in. */
      massBefore: mass(),
      /** The powder when it stayed the same. */
      massAfter: mass(),
    }),
    2,
    MOST,
  ),
});
export type FitIsothermInput = Given<z.input<typeof schema>>;
type Asked = z.output<typeof schema>;

/** One dish, as a point of the isotherm. */
export interface FittedPoint {
  /** The salt, as you named it. */
  readonly solute: string;
  /** Water activity over it, 0 to 1. */
  readonly waterActivity: number;
  /** Moisture of the powder over it, dry basis: g water per g dry matter. */
  readonly moisture: number;
  /** How far the curve is from the dish, dry basis: curve less dish. */
  readonly residual: number;
}

/** The isotherm of your own powder. */
export interface FittedIsotherm {
  /** What `isothermMoisture` and `isothermActivity` take as `parameters`. */
  readonly isotherm: {
    /** Name of the equation. */
    readonly model: 'Oswin';
    /** Moisture at a water activity of 0.5, dry basis. */
    readonly A: number;
    /** How steeply it rises. */
    readonly B: number;
    /** The water activities of the dishes: ask for none outside. */
    readonly waterActivityLimits: {
      /** Of the driest dish. */
      readonly low: number;
      /** Of the wettest dish. */
      readonly high: number;
    };
  };
  /** The dishes. */
  readonly points: readonly FittedPoint[];
  /** Standard error of A as a share of it, 0 to 1. */
  readonly errorOfA: number;
  /** Standard error of B. */
  readonly errorOfB: number;
  /** How far a moisture of the curve may be off, as a share of it, 0 to 1: one standard error. */
  readonly moistureError: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const DEFAULT_SCALE: Quantity<'mass'> = { value: 0.01, unit: 'g' };
const DEFAULT_TEMPERATURE: Quantity<'temperature'> = { value: 25, unit: 'degC' };
/** A step of the scale spreads evenly over half of it to either side. */
const UNIFORM = Math.sqrt(12);

interface Dish {
  readonly solute: string;
  readonly aw: number;
  readonly dry: number;
  /** ln(aw / (1 - aw)), and ln of the dry-basis moisture. */
  readonly x: number;
  readonly y: number;
  /** Standard error of y by the scale. */
  readonly error: number;
}

function dishesOf(asked: Asked): { dishes: Dish[]; basis: Basis[] } {
  const step = valueIn(asked.scaleStep ?? DEFAULT_SCALE, 'g');
  const at = asked.temperature ?? DEFAULT_TEMPERATURE;
  const basis: Basis[] = [];
  const dishes = asked.dishes.map(({ solute, massBefore, massAfter }, index) => {
    const found = saturatedSaltHumidity({ solute, temperature: at });
    basis.push(...found.basis.map((line) => ({ ...line, of: 'points' })));
    const aw = found.relativeHumidity;
    const matter = valueIn(massBefore, 'g') * (1 - asked.moisture);
    const water = valueIn(massAfter, 'g') - matter;
    if (!(water > 0))
      fail(
        'CONTRADICTION',
        `dishes[${index}].massAfter`,
        massAfter.value,
        'more than the dry matter that the dish began with',
      );
    return {
      solute,
      aw,
      dry: water / matter,
      x: Math.log(aw / (1 - aw)),
      y: Math.log(water / matter),
      error: (step * Math.SQRT2) / UNIFORM / water,
    };
  });
  return { dishes, basis };
}

/**
 * The isotherm of a powder of your own, from dishes of it kept over saturated salts until their mass stays the same.
 *
 * Moisture of a dish, dry basis: X = (mass after - dry matter) / dry matter, dry matter = mass before x (1 - moisture).
 * The Oswin equation X = A (aw / (1 - aw))^B is a straight line in ln X against ln(aw / (1 - aw)), fitted by least
 * squares. Its errors are those of the line by the larger of the scatter and the step of the scale.
 *
 * @returns `isotherm`, the `parameters` for `isothermMoisture` and `isothermActivity`, the dishes, and the errors
 * @throws StillroomError UNKNOWN_NAME for a salt that is in no table, CONTRADICTION for two dishes over one salt only,
 *   or a dish lighter than its dry matter
 *
 * Source: humidities OIML R 121; Oswin's equation as in Fikry and others, 2025.
 *
 * @example
 * ```ts
 * import { fitIsotherm, isothermActivity } from 'stillroom/water-activity';
 *
 * const { isotherm } = fitIsotherm({
 *   moisture: '5 %',
 *   dishes: [
 *     { solute: 'magnesium chloride', massBefore: '10 g', massAfter: '10.36 g' },
 *     { solute: 'NaCl', massBefore: '10 g', massAfter: '12.40 g' },
 *   ],
 * });
 * isotherm.A; // ≈ 0.1457
 * const here = isothermActivity({ parameters: isotherm, moisture: 0.12 });
 * here.known && here.waterActivity; // ≈ 0.427
 * ```
 */
export function fitIsotherm(input: FitIsothermInput): FittedIsotherm {
  const asked = readInput(schema, input);
  const { dishes, basis } = dishesOf(asked);
  const n = dishes.length;
  const mean = (get: (dish: Dish) => number): number => dishes.reduce((sum, dish) => sum + get(dish), 0) / n;
  const [x, y] = [mean((dish) => dish.x), mean((dish) => dish.y)];
  const spread = dishes.reduce((sum, dish) => sum + (dish.x - x) ** 2, 0);
  if (!(spread > 1e-9))
    fail('CONTRADICTION', 'dishes', undefined, 'dishes over at least two salts of different humidity');
  const B = dishes.reduce((sum, dish) => sum + (dish.x - x) * (dish.y - y), 0) / spread;
  const lnA = y - B * x;
  const scatter =
    n < 3 ? 0 : Math.sqrt(dishes.reduce((sum, dish) => sum + (dish.y - lnA - B * dish.x) ** 2, 0) / (n - 2));
  const error = Math.max(scatter, Math.sqrt(mean((dish) => dish.error ** 2)));
  const activities = dishes.map(({ aw }) => aw);
  return answer({
    isotherm: {
      model: 'Oswin',
      A: Math.exp(lnA),
      B,
      waterActivityLimits: { low: Math.min(...activities), high: Math.max(...activities) },
    },
    points: dishes.map((dish) => ({
      solute: dish.solute,
      waterActivity: dish.aw,
      moisture: dish.dry,
      residual: Math.exp(lnA + B * dish.x) - dish.dry,
    })),
    errorOfA: error * Math.sqrt(1 / n + x ** 2 / spread),
    errorOfB: error / Math.sqrt(spread),
    moistureError: error,
    basis: [
      measured('isotherm', 'your dishes'),
      measured('points', 'your weighings'),
      formBasis(equationNamed('Oswin'), 'isotherm.model'),
      ...basis,
    ],
    cautions: [activityCaution('isotherm-state'), activityCaution('wettest-piece')],
  });
}
