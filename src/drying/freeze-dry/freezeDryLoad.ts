import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { sublimationBasis, sublimationEnthalpy } from '../../heat/ice';
import { fields, optional, readInput, share } from '../../quantity/fields';
import { mapRange, turnRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { balanceBasis, refuseWetter, shareLeft } from '../../solution/massBalance';
import type { Basis, Caution } from '../../sources/basis';
import { basisOf, practiceBasis } from '../../sources/table';
import { area } from '../../words/area';
import { density } from '../../words/density';
import { length } from '../../words/length';
import { mass } from '../../words/mass';
import { targetMoisture as targetMoistureWord } from '../../words/shares';
import { measured } from '../basis';
import { caution } from '../cautions';
import { fatFields, fatOf } from '../guide/fat';
import { layerMass, lotsFor, pieceDensity, trayCover } from '../guide/trayLoad';
import { moistureRange } from '../moisture/moistureRange';
import { freezeDriedMoisture } from '../moisture/targetMoisture';
import { figure } from '../rows';
import { freezeDrying } from './tables';

const HOME_CYCLE = freezeDrying('home-cycle');
/** The slab that the published times are for. */
const SLAB = freezeDrying('slab');
/** The ice is about this cold while it sublimes; the heat changes by 0.1 % over 20 degC. */
const ICE_K = 253.15;

const schema = /* @__PURE__ */ fields({
  ...fatFields,
  /** Ready food before freezing: a mass above zero. */
  fresh: mass(),
  /** Its moisture, wet basis: 0 to below 1 or percent, one or `{ low, likely, high }`. */
  moisture: moistureRange(),
  /** When dry, wet basis: 0 to below 1 or percent; 2 % if not given (freeze-dried fruit). */
  targetMoisture: optional(targetMoistureWord({ below: 1 })),
  /** The freeze-dryer. */
  machine: fields({
    /** The ice that its condenser can hold: a mass above zero. */
    iceCapacity: mass(),
    /** Of all trays together: above zero. */
    trayArea: area(),
    /** Its greatest load of fresh food, if it has one. */
    maxLoad: optional(mass()),
  }),
  /** Of the layer: up to 10 cm; 12.5 mm if not given. */
  thickness: optional(length({ max: { value: 10, unit: 'cm' } })),
  /** Share of the trays covered: above 0 to 1; 1 for a puree, 0.6 if not given. */
  cover: optional(share({ above: 0 })),
  /** Of the food: up to 2 g/mL; 1 g/mL if not given. */
  density: optional(density({ max: { value: 2, unit: 'g/mL' } })),
});
export type FreezeDryLoadInput = z.input<typeof schema>;

export interface FreezeDryLoad {
  /** Ice that the whole load gives off. */
  readonly ice: Range<Quantity<'mass'>>;
  /** Batches that the machine needs for it, whatever the moisture within its range. */
  readonly batches: number;
  /** Fresh mass of each batch when the load is shared out evenly. */
  readonly perBatch: Quantity<'mass'>;
  /** The most fresh mass that one batch may be. */
  readonly mostPerBatch: Quantity<'mass'>;
  /** What limits a batch. */
  readonly limitedBy: 'ice capacity' | 'tray area' | 'machine load';
  /** Ice in the fullest batch, at the moist end. */
  readonly icePerBatch: Quantity<'mass'>;
  /** What is left when dry. */
  readonly dried: Range<Quantity<'mass'>>;
  /** Share of fat of the food as it goes in, where it is known; it stays, and does not dry. */
  readonly fat?: number;
  /** Heat to sublime the ice; the machine draws several times as much. */
  readonly energy: Range<Quantity<'energy'>>;
  /** Hours that extension literature gives for a home cycle, for each batch. */
  readonly hoursPerBatch: {
    /** The least that is printed. */
    readonly low: Quantity<'time'>;
    /** The most that is printed. */
    readonly high: Quantity<'time'>;
  };
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

type Given = z.output<typeof schema>;

/** The most fresh kg that each limit of the machine lets a batch be. */
function limitsOf({ machine, thickness, cover, density: given }: Given, iceShare: number, freshKg: number) {
  const meters = thickness === undefined ? figure(SLAB.thickness_mm) / 1000 : valueIn(thickness, 'm');
  const perMilliliter = given === undefined ? pieceDensity() : valueIn(given, 'g/mL');
  const limits = {
    'ice capacity': iceShare === 0 ? freshKg : valueIn(machine.iceCapacity, 'kg') / iceShare,
    // the low end of the cover fits in every case
    'tray area': layerMass(valueIn(machine.trayArea, 'm2'), meters, perMilliliter, cover ?? trayCover().low),
    'machine load': machine.maxLoad === undefined ? Number.MAX_VALUE : valueIn(machine.maxLoad, 'kg'),
  };
  const names = Object.keys(limits) as (keyof typeof limits)[];
  const limitedBy = names.reduce((least, each) => (limits[each] < limits[least] ? each : least));
  return { limitedBy, mostKg: limits[limitedBy] };
}

/**
 * How many batches a freeze-dryer needs for a load, and what limits a batch: the ice its condenser can hold, the area
 * of its trays at a thickness, or its own greatest load.
 *
 * ice = fresh (moisture - target) / (1 - target), wet basis; the moist end of the range is held against the machine's
 * ice capacity. Tray load = area x thickness x density x covered share. Energy = ice x enthalpy of sublimation.
 *
 * Fat does not dry: a food above 7 % of fat gets a caution, and so does one whose fat is not known.
 *
 * @returns masses in the unit of `fresh`, `energy` in kWh
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
  const { fresh, moisture } = given;
  const residual = freezeDriedMoisture('dried');
  const target = given.targetMoisture ?? residual.moisture;
  refuseWetter(moisture.low, target, input.targetMoisture);
  const fat = fatOf(given, moisture.likely, 'fat', input.form);
  const { unit } = fresh;
  const freshKg = valueIn(fresh, 'kg');
  const left = mapRange(moisture, (start) => shareLeft(start, target));
  const iceShare = 1 - left.high;
  const { limitedBy, mostKg } = limitsOf(given, iceShare, freshKg);
  const batches = lotsFor(freshKg, mostKg);
  const heat = sublimationEnthalpy(ICE_K);
  return answer({
    ice: mapRange(left, (part) => ({ value: fresh.value * (1 - part), unit })),
    batches,
    perBatch: { value: fresh.value / batches, unit },
    mostPerBatch: quantityIn(mostKg, 'kg', unit),
    limitedBy,
    icePerBatch: { value: (fresh.value / batches) * iceShare, unit },
    dried: turnRange(mapRange(left, (part) => ({ value: fresh.value * part, unit }))),
    ...(fat.share === undefined ? {} : { fat: fat.share }),
    energy: mapRange(left, (part) => quantityIn(freshKg * (1 - part) * heat, 'kJ', 'kWh')),
    hoursPerBatch: {
      low: { value: figure(HOME_CYCLE.hours_low), unit: 'h' },
      high: { value: figure(HOME_CYCLE.hours_high), unit: 'h' },
    },
    basis: [
      balanceBasis('ice'),
      balanceBasis('dried'),
      ...(given.targetMoisture === undefined ? residual.basis : []),
      measured('mostPerBatch', 'ice capacity and trays of the machine'),
      ...(given.cover === undefined ? [practiceBasis('mostPerBatch', 'share of the trays covered, 0.6')] : []),
      ...(given.thickness === undefined ? [basisOf(SLAB, 'mostPerBatch', 'thickness of the layer')] : []),
      ...sublimationBasis('energy'),
      basisOf(HOME_CYCLE, 'hoursPerBatch', 'hours of a home cycle'),
      ...fat.basis,
    ],
    cautions: [
      ...fat.cautions,
      caution('freeze-dried-must-be-dry'),
      caution('keep-below-collapse'),
      caution('estimate'),
    ],
  });
}
