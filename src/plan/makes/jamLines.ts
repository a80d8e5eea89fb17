import { formatQuantity } from '../../quantity/formatQuantity';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { gelTemperature } from '../../sugar/gelTemperature';
import type { Ingredient } from '../request/plannedProduct';
import { type Batch, between } from './jamBatch';
import { PART_FILLED } from './jars';
import { type Day, type Decided, headspaceText, massOf, volumeOf } from './making';
import { spooned } from './recipe';

/** What goes into all batches, each line with what goes into one. */
export function batchLines(day: Day, { printed, sugarKg, jars, pantry }: Batch, { ready }: Decided): Ingredient[] {
  const count = Math.max(1, Math.round(ready / jars.high));
  const cups = (value: number): Quantity<'volume'> => ({ value, unit: 'cup' });
  const each = (text: string): string =>
    count === 1 ? `in one batch: ${text}` : `in each of ${count} batches: ${text}`;
  const volume = (amount: Quantity<'volume'>) => volumeOf(day, { value: amount.value * count, unit: amount.unit });
  const [, fruit] = printed.fruit;
  const lemon: Quantity<'volume'> = { value: printed.lemonJuice, unit: 'tbsp' };
  const sugar = { mass: massOf(day, sugarKg * count), cups: cups(printed.sugar[1] * count) };
  return [
    {
      what: `prepared fruit (${printed.measure})`,
      role: 'fruit',
      amount: volume(cups(fruit)),
      note: each(`${between(printed.fruit)} cups, measured when it is ready`),
    },
    ...(pantry.has('bottled lemon juice')
      ? [
          {
            what: 'bottled lemon juice',
            role: 'acid' as const,
            amount: volume(lemon),
            note: each(`${formatQuantity(spooned(valueIn(lemon, 'cup')), { fraction: 8 })}, never less`),
          },
        ]
      : []),
    ...(printed.pectinMass === undefined
      ? []
      : [
          {
            what: 'powdered pectin',
            role: 'pectin' as const,
            amount: massOf(day, valueIn(printed.pectinMass, 'kg') * count),
            note: each(printed.pectinAmount ?? 'as printed'),
          },
        ]),
    ...(printed.pectinVolume === undefined
      ? []
      : [
          {
            what: 'liquid pectin',
            role: 'pectin' as const,
            amount: volume(printed.pectinVolume),
            note: each(printed.pectinAmount ?? 'as printed'),
          },
        ]),
    {
      what: 'sugar',
      role: 'sugar',
      ...(day.metric ? { amount: sugar.mass } : { amount: sugar.cups, or: sugar.mass }),
      note: each(`${between(printed.sugar)} cups, never less`),
    },
    ...(printed.water === undefined
      ? []
      : [
          {
            what: 'water',
            role: 'liquid' as const,
            amount: volume(cups(printed.water)),
            note: each(`${printed.water} cup`),
          },
        ]),
    ...(printed.spice === undefined || printed.spiceTsp === undefined
      ? []
      : [
          {
            what: printed.spice,
            role: 'spice' as const,
            amount: volume({ value: printed.spiceTsp, unit: 'tsp' }),
            toBuy: true as const,
          },
        ]),
  ];
}

export function jamSteps(day: Day, { printed }: Batch, headspace: Quantity<'length'>): string[] {
  const { temperature } = gelTemperature({ elevation: day.request.kitchen.elevation, spread: 'jam' });
  return [
    ...(printed.pectin === 'none'
      ? [`It is done at about ${formatQuantity(temperature)} here, or when a little on a cold plate does not run.`]
      : []),
    'Cook one batch at a time, as printed: never double it, and leave nothing out. Skim.',
    `Fill hot into hot jars, ${headspaceText(day, headspace)} of headspace; wipe the rims; put on the lids.`,
    PART_FILLED,
  ];
}
