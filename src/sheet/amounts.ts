import { formatQuantity } from '../quantity/formatQuantity';
import { type Rounding, roundToStep } from '../quantity/fractions';
import { valueIn } from '../quantity/scale';
import type { Money, Quantity, Range } from '../quantity/types';

const METRIC: ReadonlySet<string> = new Set(['g', 'mg', 'kg', 'tonne']);
/** Whether a plan's weights are in metric units. */
export const isMetric = (mass: Quantity<'mass'> | undefined): boolean => mass !== undefined && METRIC.has(mass.unit);
const ONE_UNIT = /^([\d.,/ ]+) ([a-z]+)$/;
const OUNCES_IN_POUND = 16;

/** A weight as a kitchen scale shows it: `2 lb 3 oz`, `6 1/4 oz`, `1.25 kg`, `340 g`. */
export function weight(mass: Quantity<'mass'>, rounding: Rounding = 'nearest'): string {
  if (METRIC.has(mass.unit)) {
    const grams = valueIn(mass, 'g');
    return grams <= 995
      ? formatQuantity({ value: grams, unit: 'g' }, { step: grams < 100 ? 1 : 5, rounding })
      : formatQuantity({ value: grams / 1000, unit: 'kg' }, { step: grams < 10_000 ? 0.01 : 0.1, rounding });
  }
  const ounces = valueIn(mass, 'oz');
  if (ounces < 8) return formatQuantity({ value: ounces, unit: 'oz' }, { fraction: 4, rounding });
  if (ounces >= 20 * OUNCES_IN_POUND) {
    return formatQuantity({ value: ounces / OUNCES_IN_POUND, unit: 'lb' }, { fraction: 2, rounding });
  }
  const whole = roundToStep(ounces, 1, rounding).toNumber();
  const pounds = Math.floor(whole / OUNCES_IN_POUND);
  const rest = whole % OUNCES_IN_POUND;
  return [pounds > 0 ? `${pounds} lb` : '', rest > 0 || pounds === 0 ? `${rest} oz` : '']
    .filter((part) => part !== '')
    .join(' ');
}

/** A range of weights, its ends rounded outwards: `31 1/2 to 37 lb`. */
export const weights = ({ low, high }: Omit<Range<Quantity<'mass'>>, 'likely'>): string => {
  const [from, to] = [weight(low, 'down'), weight(high, 'up')];
  if (from === to) return from;
  // one unit said once: `14 to 15 oz`, but `14 oz to 1 lb 2 oz`
  const [, amount, unit] = ONE_UNIT.exec(from) ?? [];
  return `${unit !== undefined && ONE_UNIT.exec(to)?.[2] === unit ? amount : from} to ${to}`;
};

/** A volume by the cup for US measures: quarts when there are many, spoons when there are few. */
export function volume(amount: Quantity<'volume'>, rounding: Rounding = 'nearest'): string {
  const text = (value: number, unit: 'quart' | 'cup' | 'tbsp' | 'tsp', fraction: 2 | 4 | 8) =>
    formatQuantity({ value, unit }, { fraction, rounding });
  if (['mL', 'L', 'dL', 'm3'].includes(amount.unit)) {
    const millilitres = valueIn(amount, 'mL');
    return millilitres < 1000
      ? formatQuantity({ value: millilitres, unit: 'mL' }, { step: 5, rounding })
      : formatQuantity({ value: millilitres / 1000, unit: 'L' }, { step: 0.1, rounding });
  }
  if (amount.unit === 'fl oz') return formatQuantity(amount, { fraction: 2, rounding });
  const cups = valueIn(amount, 'cup');
  if (cups >= 16) return text(cups / 4, 'quart', 4);
  if (cups >= 1) return text(cups, 'cup', cups < 4 ? 8 : 4);
  // a quarter of a cup, or the spoons between two of them
  if (cups >= 0.25 && Math.abs(4 * cups - Math.round(4 * cups)) < 1e-6) return text(cups, 'cup', 4);
  return cups >= 1 / 16 ? text(cups * 16, 'tbsp', 2) : text(cups * 48, 'tsp', 4);
}

/** A range of energy, its ends rounded outwards: `3.4 to 9.8 kWh, likely 5.6`. */
export function kilowattHours({ low, likely, high }: Range<Quantity<'energy'>>): string {
  const text = (energy: Quantity<'energy'>, rounding: Rounding) => {
    const kilowatts = valueIn(energy, 'kWh');
    return String(roundToStep(kilowatts, kilowatts < 10 ? 0.1 : 1, rounding).toNumber());
  };
  const [from, to] = [text(low, 'down'), text(high, 'up')];
  return from === to ? `${to} kWh` : `${from} to ${to} kWh, likely ${text(likely, 'nearest')}`;
}

export const price = ({ value, unit }: Money): string => `${value.toFixed(2)} ${unit}`;

/** Minutes as hours, up to the next quarter. */
export const hours = (minutes: number): string =>
  formatQuantity({ value: minutes / 60, unit: 'h' }, { fraction: 4, rounding: 'up' });

/** With a capital letter. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
