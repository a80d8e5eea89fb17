import { isMass } from '../quantity/fields';
import { formatQuantity } from '../quantity/formatQuantity';
import { type Rounding, roundToStep } from '../quantity/fractions';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import { volume, weight, weights } from './amounts';
import { say } from './words';

/** US measure or metric. */
export type SheetUnits = 'us' | 'metric';

/** How a sheet writes what is measured, in the units that it is printed in. */
export interface Measure {
  /** The unit that food is weighed in. */
  readonly massUnit: 'lb' | 'kg';
  /** To the ounce or gram. */
  mass(mass: Quantity<'mass'>, rounding?: Rounding): string;
  masses(range: Omit<Range<Quantity<'mass'>>, 'likely'>): string;
  /** A lot or a batch, as a cook weighs it: quarters and halves of a pound, tenths and halves of a kilogram. */
  batch(mass: Quantity<'mass'>, rounding?: Rounding): string;
  volume(amount: Quantity<'volume'>, rounding?: Rounding): string;
  amount(amount: Quantity<'mass'> | Quantity<'volume'>, rounding?: Rounding): string;
  /** Inches as printed, on a metric page with millimeters. */
  length(length: Quantity<'length'>): string;
  /** A depth that food is spread to, to the nearest millimeter. */
  depth(length: Quantity<'length'>): string;
  temperature(temperature: Quantity<'temperature'>): string;
  /** Never less than it is. */
  pressure(pressure: Quantity<'pressure'>): string;
  elevation(elevation: Quantity<'length'>): string;
}

/** Steps to round a batch to: each row gives an amount in the unit, and the step for anything above it. */
const STEPS = {
  lb: [
    [40, 1],
    [5, 0.5],
    [2, 0.25],
  ],
  kg: [
    [10, 0.5],
    [2, 0.1],
  ],
} as const;

export function measureIn(units: SheetUnits): Measure {
  const metric = units === 'metric';
  const massUnit = metric ? 'kg' : 'lb';
  const mass = (given: Quantity<'mass'>) => quantityIn<'mass'>(given.value, given.unit, massUnit);
  const liquid = (given: Quantity<'volume'>) =>
    metric || ['fl oz', 'tsp', 'tbsp', 'cup'].includes(given.unit) !== true
      ? quantityIn<'volume'>(given.value, given.unit, metric ? 'mL' : 'cup')
      : given;
  const writer: Measure = {
    massUnit,
    mass: (given, rounding) => weight(mass(given), rounding),
    masses: ({ low, high }) => weights({ low: mass(low), high: mass(high) }),
    batch: (given, rounding = 'up') => {
      const value = valueIn(given, massUnit);
      const step = STEPS[massUnit].find(([above]) => value >= above)?.[1];
      if (step === undefined) return weight(mass(given), rounding);
      // a hair over a step is that step: the plan's own rounding is no more fruit
      const near = roundToStep(value, step, 'nearest').toNumber();
      const rounded = Math.abs(value - near) < step / 50 ? near : roundToStep(value, step, rounding).toNumber();
      return formatQuantity({ value: rounded, unit: massUnit }, metric ? { step: 0.1 } : { fraction: 4 });
    },
    volume: (given, rounding) => volume(liquid(given), rounding),
    amount: (given, rounding) =>
      isMass(given as Quantity)
        ? writer.mass(given as Quantity<'mass'>, rounding)
        : writer.volume(given as Quantity<'volume'>, rounding),
    length: (given) => {
      const printed = formatQuantity(given, { unit: 'in', fraction: 8 });
      return metric ? `${printed} (${formatQuantity(given, { unit: 'mm', rounding: 'up' })})` : printed;
    },
    depth: (given) => {
      const printed = formatQuantity(given, { unit: 'in', fraction: 8 });
      return metric ? `${printed} (${formatQuantity(given, { unit: 'mm', step: 1 })})` : printed;
    },
    temperature: (given) => formatQuantity(given, { unit: metric ? 'degC' : 'degF', step: 1 }),
    pressure: (given) => {
      const write = (unit: string) => formatQuantity(given, { unit, rounding: 'up' });
      return metric ? `${write('psi')} (${write('kPa')})` : write('psi');
    },
    elevation: (given) => formatQuantity(given, { unit: metric ? 'm' : 'ft' }),
  };
  return writer;
}

const TWO_MONTHS = 60;

/** How long something keeps, in the largest unit that gives whole numbers. */
export function spanText(low: Quantity<'time'> | undefined, high: Quantity<'time'>): string {
  const days = (time: Quantity<'time'>) => valueIn(time, 'day');
  const ends = [low ?? high, high].map(days) as [number, number];
  const whole = (unit: number) =>
    ends.every((end) => end >= unit && Math.abs(end / unit - Math.round(end / unit)) < 1e-6);
  const [unit, several, one] = ends.every((end) => end >= TWO_MONTHS)
    ? ([30, 'time.months', 'time.month'] as const)
    : whole(7)
      ? ([7, 'time.weeks', 'time.week'] as const)
      : ends[1] >= 1
        ? ([1, 'time.days', 'time.day'] as const)
        : ([1 / 24, 'time.hours', 'time.hour'] as const);
  // never longer than it keeps
  const [from, to] = ends.map((end) => Math.floor((end / unit) * (1 + 1e-9))) as [number, number];
  return from === to ? say(one, { high: to }) : say(several, { low: from, high: to });
}
