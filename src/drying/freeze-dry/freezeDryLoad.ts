import type * as z from 'zod/mini';
import freezeDryingTable from '../../../data/drying/freeze-drying.json';
import { answer } from '../../common/answer';
import { sublimationBasis, sublimationEnthalpy } from '../../heat/ice';
import { area, density, fields, length, mass, optional, readInput, share } from '../../quantity/fields';
import { mapRange, turnRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { refuseWetter, shareLeft } from '../../solution/massBalance';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { caution } from '../cautions';
import { fatFields, fatOf } from '../guide/fat';
import { layerMass, lotsFor } from '../guide/trayLoad';
import { freezeDriedMoisture } from '../keep/storage';
import { MOISTURE_BASES } from '../moisture/moistureBasis';
import { moistureRange } from '../moisture/moistureRange';

/** A published time or condition of freeze-drying. */
export interface FreezeDryingRow extends Sourced {
  readonly food: string;
  readonly item?: string;
  readonly thickness_mm?: number;
  readonly hours_low?: number;
  readonly hours_high?: number;
  readonly hours_total?: number | readonly [number, number];
  readonly hours_to_4_percent?: number;
}

const rows = asTable<FreezeDryingRow>(freezeDryingTable).rows;
/** The row of this item; items are fixed names of the table. */
export function freezeDryingRow(item: string): FreezeDryingRow {
  const found = rows.find((row) => row.item === item);
  if (found === undefined) throw new Error(`no freeze-drying row ${item}`);
  return found;
}
const homeCycle = freezeDryingRow('typical home cycle');
const slab = freezeDryingRow('slab');

/** The thickness of the slab that the published times are for. */
const SLAB: Quantity<'length'> = { value: slab.thickness_mm as number, unit: 'mm' };
/** Pieces or puree spread on a tray: the share covered, as in `trayLoad`; the low end fits in every case. */
const LEAST_COVER = 0.6;
/** The ice is about this cold while it sublimes; the heat changes by 0.1 % over 20 degC. */
const ICE_K = 253.15;

const schema = fields({
  ...fatFields,
  fresh: mass(),
  moisture: moistureRange(),
  targetMoisture: optional(share({ below: 1 })),
  machine: fields({ iceCapacity: mass(), trayArea: area(), maxLoad: optional(mass()) }),
  thickness: optional(length({ max: { value: 10, unit: 'cm' } })),
  cover: optional(share({ above: 0 })),
  density: optional(density({ max: { value: 2, unit: 'g/mL' } })),
});
export type FreezeDryLoadInput = z.input<typeof schema>;

export interface FreezeDryLoad {
  /** Ice that the whole load gives off. */
  readonly ice: Range<Quantity<'mass'>>;
  /** Batches the machine needs for it, whatever the moisture within its range. */
  readonly batches: number;
  /** Fresh weight of each batch when the load is shared out evenly. */
  readonly perBatch: Quantity<'mass'>;
  /** The most fresh weight that one batch may be. */
  readonly mostPerBatch: Quantity<'mass'>;
  readonly limitedBy: 'ice capacity' | 'tray area' | 'machine load';
  /** Ice in the fullest batch, at the moist end. */
  readonly icePerBatch: Quantity<'mass'>;
  /** What is left when dry. */
  readonly dried: Range<Quantity<'mass'>>;
  /** Share of fat of the food as it goes in, where it is known; it stays, and does not dry. */
  readonly fat?: number;
  /** Heat to sublime the ice; the machine draws several times as much. */
  readonly energy: Range<Quantity<'energy'>>;
  /** Hours that extension literature gives for a home cycle, per batch. */
  readonly hoursPerBatch: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How many batches a freeze-dryer needs for a load, and what limits a batch: the ice its condenser can hold, the area
 * of its trays at a thickness, or its own greatest load.
 *
 * ice = fresh (moisture - target) / (1 - target), wet basis; the moist end of the range is held against the machine's
 * ice capacity. Tray load = area x thickness x density x covered share. Energy = ice x enthalpy of sublimation.
 *
 * Fat does not dry: a food above 7 % of fat gets a caution, and so does one whose fat nobody has said.
 *
 * @param input.food - what is dried, for its fat: `strawberry`, `avocado`, `cheese` ...
 * @param input.fat - its share of fat, 0 to below 1 or percent; by `food` if not given
 * @param input.fresh - ready produce before freezing
 * @param input.moisture - its moisture: one ratio or `{ low, likely, high }`, wet basis
 * @param input.targetMoisture - when dry; 2 % if not given (freeze-dried fruit)
 * @param input.machine - `iceCapacity`, `trayArea` (all trays together) and, if it has one, `maxLoad`
 * @param input.thickness - of the layer, up to 10 cm; 12.5 mm if not given
 * @param input.cover - share of the trays covered, above 0 to 1: 1 for a puree, 0.6 if not given
 * @param input.density - of the produce; 1 g/mL if not given
 * @returns weights in the unit of `fresh`, `energy` in kWh
 * @throws StillroomError CONTRADICTION when the target is wetter than the start, or fat and water exceed the whole
 *
 * @example
 * ```ts
 * import { freezeDryLoad } from 'stillroom/drying';
 *
 * const load = freezeDryLoad({
 *   food: 'strawberries',
 *   fresh: '20 lb',
 *   moisture: '90 %',
 *   machine: { iceCapacity: '9 lb', trayArea: '900 in2' },
 * });
 * load.batches; // => 3
 * load.limitedBy; // => 'tray area'
 * ```
 */
export function freezeDryLoad(input: FreezeDryLoadInput): FreezeDryLoad {
  const given = readInput(schema, input);
  const { fresh, moisture, machine, thickness = SLAB, cover = LEAST_COVER } = given;
  const residual = freezeDriedMoisture();
  const target = given.targetMoisture ?? residual.moisture;
  refuseWetter(moisture.low, target, input.targetMoisture);
  const fat = fatOf(given.food, given.fat, moisture.likely);
  const { unit } = fresh;
  const back = (kg: number): Quantity<'mass'> => quantityIn(kg, 'kg', unit);
  const freshKg = valueIn(fresh, 'kg');
  const left = mapRange(moisture, (start) => shareLeft(start, target));
  const iceShare = 1 - left.high;
  const perMillilitre = given.density === undefined ? 1 : valueIn(given.density, 'g/mL');
  const limits = {
    'ice capacity': iceShare === 0 ? freshKg : valueIn(machine.iceCapacity, 'kg') / iceShare,
    'tray area': layerMass(valueIn(machine.trayArea, 'm2'), valueIn(thickness, 'm'), perMillilitre, cover),
    'machine load': machine.maxLoad === undefined ? Number.MAX_VALUE : valueIn(machine.maxLoad, 'kg'),
  };
  const names = Object.keys(limits) as (keyof typeof limits)[];
  const limitedBy = names.reduce((least, name) => (limits[name] < limits[least] ? name : least));
  const batches = lotsFor(freshKg, limits[limitedBy]);
  const heat = sublimationEnthalpy(ICE_K);
  const [low, high] = [homeCycle.hours_low as number, homeCycle.hours_high as number];
  return answer({
    ice: mapRange(left, (share) => ({ value: fresh.value * (1 - share), unit })),
    batches,
    perBatch: { value: fresh.value / batches, unit },
    mostPerBatch: back(limits[limitedBy]),
    limitedBy,
    icePerBatch: { value: (fresh.value / batches) * iceShare, unit },
    dried: turnRange(mapRange(left, (share) => ({ value: fresh.value * share, unit }))),
    ...(fat.share === undefined ? {} : { fat: fat.share }),
    energy: mapRange(left, (share) => quantityIn(freshKg * (1 - share) * heat, 'kJ', 'kWh')),
    hoursPerBatch: { low: { value: low, unit: 'h' }, high: { value: high, unit: 'h' } },
    basis: joinBasis(
      [MOISTURE_BASES],
      given.targetMoisture === undefined ? residual.basis : [],
      [{ of: 'ice capacity and trays of the machine', kind: 'measured' }],
      cover === LEAST_COVER ? [{ of: 'share of the trays covered', kind: 'common-practice' }] : [],
      given.thickness === undefined ? [basisOf(slab, 'thickness of the layer')] : [],
      sublimationBasis('energy'),
      [basisOf(homeCycle, 'hours of a home cycle')],
      fat.basis,
    ),
    cautions: [
      ...fat.cautions,
      caution('freeze-dried-must-be-dry'),
      caution('keep-below-collapse'),
      caution('estimate'),
    ],
  });
}
