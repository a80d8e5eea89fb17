import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { Decimal } from '../common/decimal';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { parseAmount } from '../quantity/amount';
import { choice, fields, isMass, list, massOrVolume, optional, readInput } from '../quantity/fields';
import { toDecimalIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { recordCaution } from './cautions';
import { labelRuleRows, type MavRow, mavRows, ruleNamed, type TneRow, tneRows } from './tables';

type Amount = Quantity<'mass'> | Quantity<'volume'>;

const schema = /* @__PURE__ */ fields({
  /** Net weight on the label; for the EU rule a volume too. US: up to 3.2 lb; EU: 5 g or mL up. */
  labelled: massOrVolume(),
  /** Net contents, or gross ones with `tare`; 1 to 10,000. */
  measured: list('net contents measured', massOrVolume(), 1, 10_000),
  /** `US` or `EU`. */
  rule: choice('the rule', ['US', 'EU']),
  /** Weight of the empty jar with its lid, taken off each. */
  tare: optional(massOrVolume()),
});
export type NetWeightCheckInput = Given<z.input<typeof schema>>;

export interface NetWeightCheck {
  /** Whether the packages weighed pass, as far as this check goes. */
  readonly passes: boolean;
  /** Average net content, in the label's unit. */
  readonly mean: Amount;
  readonly averagePasses: boolean;
  /** How far one package may be short: the maximum allowable variation, or the tolerable negative error. */
  readonly allowed: Amount;
  /** The least that one package may hold. */
  readonly least: Amount;
  readonly individualPasses: boolean;
  /** Places in the list, from 0, of packages short by more than is allowed. */
  readonly short: readonly number[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Share of packages that may be short by more than the tolerable negative error; none by twice as much. Recalled. */
const MOST_SHORT = 0.025;

const POUNDS = new Set(['lb', 'oz']);

/** The maximum allowable variation, in the label's unit: from the ounce, pound or gram column, as the label is. */
function mavOf(labelled: Quantity<'mass'>, given: unknown): { allowed: Decimal; row: MavRow } {
  const customary = POUNDS.has(labelled.unit);
  const amount = toDecimalIn(labelled, customary ? 'lb' : 'g');
  const row = mavRows.find((entry) => amount.lte(customary ? entry.to_lb : entry.to_g));
  if (row === undefined)
    fail('OUT_OF_RANGE', 'labelled', given, 'at most 3.2 lb (1,450 g), where the table known here ends');
  const { mav_share, mav_oz, mav_lb, mav_g } = row;
  const size = new Decimal(labelled.value);
  if (mav_share !== undefined) return { allowed: size.times(mav_share), row };
  if (labelled.unit === 'oz') return { allowed: parseAmount(mav_oz as string) as Decimal, row };
  if (labelled.unit === 'lb') return { allowed: new Decimal(mav_lb as number), row };
  return { allowed: toDecimalIn({ value: mav_g as number, unit: 'g' }, labelled.unit), row };
}

/** The tolerable negative error, in the label's unit; percentages are not rounded up, which is the stricter reading. */
function tneOf(labelled: Amount, given: unknown): { allowed: Decimal; row: TneRow } {
  const unit = isMass(labelled) ? 'g' : 'mL';
  const amount = toDecimalIn(labelled, unit);
  const row = tneRows.find(({ to }) => to === null || amount.lte(to));
  if (row === undefined || amount.lt((tneRows[0] as TneRow).over)) {
    fail('OUT_OF_RANGE', 'labelled', given, 'at least 5 g or 5 mL, where the steps begin');
  }
  const error = row.tne_g === null ? amount.times(row.tne_percent as number).div(100) : new Decimal(row.tne_g);
  return { allowed: toDecimalIn({ value: error.toNumber(), unit }, labelled.unit), row };
}

/**
 * Whether the jars or bags you weighed hold what their label says: on average, and each one.
 *
 * US: the average is at least the label, and no package is short by more than the maximum allowable variation; an
 * overfilled one makes up for nothing. EU: the average is at least the label, at most 2.5 % of the packages are short by more
 * than the tolerable negative error and none by twice that. The US ladder, and that the EU packer's rules use this
 * ladder and these shares, are recalled and not read: `basis` and `cautions` say so, and none of it is given as law.
 *
 * @returns `passes`, `mean`, `allowed`, `least`, `short` (places in the list), in the unit of the label
 * @throws StillroomError WRONG_DIMENSION for a volume under the US rule or a mix of mass and volume, OUT_OF_RANGE
 *
 * Source: NIST Handbook 133 (average and individual requirement read; Table 2-5 recalled); UK SI 2006/1258, Schedule 5
 * (the steps of the EU ladder).
 *
 * @example
 * ```ts
 * import { netWeightCheck } from 'stillroom/record';
 *
 * const jars = netWeightCheck({ labelled: '8 oz', measured: ['8.1 oz', '8 oz', '7.5 oz'], rule: 'US' });
 * jars.least; // => { value: 7.5625, unit: 'oz' }
 * jars.short; // => [2]
 * ```
 */
export function netWeightCheck(input: NetWeightCheckInput): NetWeightCheck {
  const { labelled, measured, rule, tare } = readInput(schema, input);
  const weight = isMass(labelled);
  if (rule === 'US' && !weight)
    fail('WRONG_DIMENSION', 'labelled', input.labelled, 'a net weight: the US table here is for weight');
  const same = (amount: Amount, path: string) => {
    if (isMass(amount) !== weight)
      fail('WRONG_DIMENSION', path, amount.value, weight ? 'a mass, as the label' : 'a volume, as the label');
    return toDecimalIn(amount, labelled.unit);
  };
  const empty = tare === undefined ? new Decimal(0) : same(tare, 'tare');
  const nets = measured.map((amount, index) => {
    const net = same(amount, `measured[${index}]`).minus(empty);
    if (!net.gt(0)) fail('CONTRADICTION', `measured[${index}]`, amount.value, 'more than the tare');
    return net;
  });
  const label = new Decimal(labelled.value);
  const { allowed, row } =
    rule === 'US' ? mavOf(labelled as Quantity<'mass'>, input.labelled) : tneOf(labelled, input.labelled);
  const mean = nets.reduce((sum, net) => sum.plus(net), new Decimal(0)).div(nets.length);
  const least = label.minus(allowed);
  const short = nets.flatMap((net, index) => (net.lt(least) ? [index] : []));
  const floor = label.minus(allowed.times(2));
  const individualPasses =
    rule === 'US'
      ? short.length === 0
      : short.length <= MOST_SHORT * nets.length && nets.every((net) => net.gte(floor));
  const averagePasses = mean.gte(label);
  const inUnit = (value: Decimal) => ({ value: value.toNumber(), unit: labelled.unit }) as Amount;
  const rules = rule === 'US' ? ['average', 'single', 'no-offset', 'tare'] : [];
  return answer({
    passes: averagePasses && individualPasses,
    mean: inUnit(mean),
    averagePasses,
    allowed: inUnit(allowed),
    least: inUnit(least),
    individualPasses,
    short,
    basis: joinBasis(
      [basisOf(row, rule === 'US' ? 'maximum allowable variation' : 'step of the ladder of tolerable errors')],
      rules.map((id) => basisOf(ruleNamed(labelRuleRows, id), id)),
      rule === 'US'
        ? []
        : [
            {
              of: 'packers rules: average, 2.5 % short, none twice as short',
              kind: 'recalled',
              source: 'from-memory',
            },
          ],
    ),
    cautions: [caution('recalled'), recordCaution('not-a-sampling-plan'), recordCaution('label-law-differs')],
  });
}
