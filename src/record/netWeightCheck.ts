import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { type Exact, exact } from '../common/exact';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { parseAmount } from '../quantity/amount';
import { choice, fields, isMass, list, optional, readInput } from '../quantity/fields';
import { exactIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { amount } from '../words/amount';
import { recordCaution } from './cautions';
import { ERRORS, figureOf, LABEL_RULES, type MavRow, rowNamed, type TneRow, VARIATIONS } from './tables';

type Amount = Quantity<'mass'> | Quantity<'volume'>;

const schema = /* @__PURE__ */ fields({
  /** Net contents on the label: US a weight up to 3.2 lb; EU a weight or volume from 5 g or mL. */
  labeled: amount(),
  /** What each package holds, or weighs with its jar where you give `tare`; 1 to 10,000. */
  contents: list('what each package holds', amount(), 1, 10_000),
  /** Whose rules to check by: `US` or `EU`. */
  market: choice('whose rules to check by', ['US', 'EU']),
  /** Weight of the empty jar with its lid, subtracted from each. */
  tare: optional(amount()),
});
export type NetWeightCheckInput = Given<z.input<typeof schema>>;

/** Whether packages hold what their label says. */
export interface NetWeightCheck {
  /** Whether the packages you weighed pass, as far as this check goes. */
  readonly passes: boolean;
  /** Average net contents, in the label's unit. */
  readonly averageContents: Amount;
  /** Whether the average is at least the label. */
  readonly averagePasses: boolean;
  /** How far one package may be short: the maximum allowable variation, or the tolerable negative error. */
  readonly allowed: Amount;
  /** The least that one package may hold. */
  readonly leastContents: Amount;
  /** Whether each package holds enough. */
  readonly individualPasses: boolean;
  /** Places in the list, from 0, of packages that hold less than `leastContents`. */
  readonly shortPackages: readonly number[];
  /** Where the rules come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** Share of packages that may be short by more than the tolerable negative error; none by twice as much. Recalled. */
const MOST_SHORT = 0.025;

const EU_RULES: Basis = {
  of: 'passes',
  kind: 'recalled',
  source: 'from-memory',
  note: 'packers rules: average, 2.5 % short, none twice as short',
};

const POUNDS = new Set(['lb', 'oz']);

/** The maximum allowable variation, in the label's unit: from the ounce, pound or gram column, as the label is. */
function mavOf(labeled: Quantity<'mass'>, given: unknown): { allowed: Exact; row: MavRow } {
  const customary = POUNDS.has(labeled.unit);
  const amount = exactIn(labeled, customary ? 'lb' : 'g');
  const row = VARIATIONS.find((entry) => amount.lte(customary ? entry.to_lb : entry.to_g));
  if (row === undefined) fail('OUT_OF_RANGE', 'labeled', given, 'at most 3.2 lb (1,450 g), where this table ends');
  const { mav_share } = row;
  const size = exact(labeled.value);
  if (mav_share !== undefined) return { allowed: size.times(mav_share), row };
  if (labeled.unit === 'oz') return { allowed: parseAmount(figureOf(row, 'mav_oz')) as Exact, row };
  if (labeled.unit === 'lb') return { allowed: exact(figureOf(row, 'mav_lb')), row };
  return { allowed: exactIn({ value: figureOf(row, 'mav_g'), unit: 'g' }, labeled.unit), row };
}

/** The tolerable negative error, in the label's unit; percentages are not rounded up, which is the stricter reading. */
function tneOf(labeled: Amount, given: unknown): { allowed: Exact; row: TneRow } {
  const unit = isMass(labeled) ? 'g' : 'mL';
  const amount = exactIn(labeled, unit);
  const row = ERRORS.find(({ to }) => to === undefined || amount.lte(to));
  if (row === undefined || amount.lt((ERRORS[0] as TneRow).over)) {
    fail('OUT_OF_RANGE', 'labeled', given, 'at least 5 g or 5 mL, where the steps begin');
  }
  const error = row.tne_g === undefined ? amount.times(figureOf(row, 'tne_percent')).div(100) : exact(row.tne_g);
  return { allowed: exactIn({ value: error.toNumber(), unit }, labeled.unit), row };
}

/**
 * Whether the jars or bags you weighed hold what their label says: on average, and each one.
 *
 * US: the average is at least the label, and no package is short by more than the maximum allowable variation; an
 * overfilled one does not make up for a short one. EU: the average is at least the label, at most 2.5 % of the packages are short by more
 * than the tolerable negative error and none by twice that. The US ladder, and that the EU packer's rules use this
 * ladder and these shares, are recalled and not read: `basis` and `cautions` say so, and none of it is given as law.
 *
 * @returns `passes`, `averageContents`, `allowed`, `leastContents`, `shortPackages`; amounts in the unit of the label
 * @throws StillroomError WRONG_DIMENSION for a volume under the US rule or a mix of mass and volume, OUT_OF_RANGE, CONTRADICTION for less than the tare
 *
 * Source: NIST Handbook 133 (average and individual requirement read; Table 2-5 recalled); UK SI 2006/1258, Schedule 5
 * (the steps of the EU ladder).
 *
 * @example
 * ```ts
 * import { netWeightCheck } from 'stillroom/record';
 *
 * const jars = netWeightCheck({ labeled: '8 oz', contents: ['8.1 oz', '8 oz', '7.5 oz'], market: 'US' });
 * jars.leastContents; // => { value: 7.5625, unit: 'oz' }
 * jars.shortPackages; // => [2]
 * ```
 */
export function netWeightCheck(input: NetWeightCheckInput): NetWeightCheck {
  const { labeled, contents, market, tare } = readInput(schema, input);
  const isWeight = isMass(labeled);
  if (market === 'US' && !isWeight)
    fail('WRONG_DIMENSION', 'labeled', input.labeled, 'a net weight: the US table is for weight');
  const same = (held: Amount, path: string) => {
    if (isMass(held) !== isWeight)
      fail('WRONG_DIMENSION', path, held.value, isWeight ? 'a mass, as the label' : 'a volume, as the label');
    return exactIn(held, labeled.unit);
  };
  const empty = tare === undefined ? exact(0) : same(tare, 'tare');
  const nets = contents.map((held, index) => {
    const net = same(held, `contents[${index}]`).minus(empty);
    if (!net.gt(0)) fail('CONTRADICTION', `contents[${index}]`, held.value, 'more than the tare');
    return net;
  });
  const label = exact(labeled.value);
  const { allowed, row } =
    market === 'US' ? mavOf(labeled as Quantity<'mass'>, input.labeled) : tneOf(labeled, input.labeled);
  const mean = nets.reduce((sum, net) => sum.plus(net), exact(0)).div(nets.length);
  const least = label.minus(allowed);
  const short = nets.flatMap((net, index) => (net.lt(least) ? [index] : []));
  const floor = label.minus(allowed.times(2));
  const individualPasses =
    market === 'US'
      ? short.length === 0
      : short.length <= MOST_SHORT * nets.length && nets.every((net) => net.gte(floor));
  const averagePasses = mean.gte(label);
  const inUnit = (value: Exact) => ({ value: value.toNumber(), unit: labeled.unit }) as Amount;
  const rules =
    market === 'US' ? ['average', 'single', 'no-offset', 'tare'].map((id) => rowNamed(LABEL_RULES, id)) : [];
  return answer({
    passes: averagePasses && individualPasses,
    averageContents: inUnit(mean),
    averagePasses,
    allowed: inUnit(allowed),
    leastContents: inUnit(least),
    individualPasses,
    shortPackages: short,
    basis: [
      basisOf(row, 'allowed', market === 'US' ? 'maximum allowable variation' : 'step of tolerable negative errors'),
      ...rules.map((rule) => basisOf(rule, 'passes', rule.text)),
      ...(market === 'US' ? [] : [EU_RULES]),
    ],
    cautions: [caution('recalled'), recordCaution('not-a-sampling-plan'), recordCaution('label-law-differs')],
  });
}
