/** What the fields of a kitchen must agree on; a pot with a rack is written among the canners. */
import * as z from 'zod/mini';
import { fail } from '../errors/StillroomError';
import { fields, reading } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { type GasAmount, isEnergy } from './kitchenFields';

interface Read {
  readonly pots?: readonly PotRead[] | undefined;
  readonly canners?: readonly CannerRead[] | undefined;
  readonly utilities?:
    | { readonly stove?: string | undefined; readonly gas?: unknown; readonly gasPer?: GasAmount | undefined }
    | undefined;
}
interface PotRead {
  readonly name?: string | undefined;
  readonly volume: Quantity<'volume'>;
  readonly count?: number | undefined;
  readonly rack?: boolean | undefined;
  readonly holds?: Readonly<Record<string, number>> | undefined;
}
interface CannerRead {
  readonly name?: string | undefined;
}

/** A kitchen from its fields. */
export function kitchenOf<const Shape extends z.core.$ZodShape>(shape: Shape) {
  const schema = fields(shape);
  type Kitchen = z.output<typeof schema>;
  const whole = reading<Kitchen, Kitchen>((given) => {
    const kitchen = given as Kitchen & Read;
    checkTwins(kitchen);
    checkGas(kitchen);
    return withRacks(kitchen);
  });
  return z.pipe(schema, whole as never) as unknown as z.ZodMiniPipe<typeof schema, typeof whole>;
}

/** The name by which a pot and a canner are known to be one vessel. */
export const vesselName = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, ' ');
/** What a pot is called: by its name, or after its size. */
export const potName = ({ name, volume }: Pick<PotRead, 'name' | 'volume'>): string =>
  name ?? `${volume.value} ${volume.unit} pot`;

/** A pot with a rack is a canner already. */
function checkTwins({ pots = [], canners = [] }: Read): void {
  pots.forEach((pot, index) => {
    const twin = canners.findIndex(({ name }) => name !== undefined && vesselName(name) === vesselName(potName(pot)));
    if (pot.rack !== true || twin < 0) return;
    const expected = `pots[${index}] with its rack only once: it is the same vessel`;
    fail('CONTRADICTION', `canners[${twin}].name`, canners[twin]?.name, expected);
  });
}

/** A price by the pound or gallon is one of propane: natural gas comes by its heat. */
function checkGas({ utilities }: Read): void {
  if (utilities?.gasPer === undefined) return;
  if (utilities.gas === undefined)
    fail('MISSING', 'utilities.gas', undefined, 'the price of that much, such as "3.10 USD"');
  if (utilities.stove !== 'propane' && !isEnergy(utilities.gasPer)) {
    const { value, unit } = utilities.gasPer;
    const expected = 'an energy such as "1 therm" or "1 kWh": only propane is sold by weight or volume';
    fail('WRONG_DIMENSION', 'utilities.gasPer', `${value} ${unit}`, expected);
  }
}

/** Each pot with a rack as a boiling-water canner of its name, half full of water as such canners are. */
function withRacks<K extends Read>(kitchen: K): K {
  const racks = (kitchen.pots ?? []).filter(({ rack }) => rack === true);
  if (racks.length === 0) return kitchen;
  const canners = racks.map((pot) => ({
    name: potName(pot),
    method: 'boiling-water',
    holds: pot.holds,
    water: { value: pot.volume.value / 2, unit: pot.volume.unit },
    ...(pot.count === undefined ? {} : { count: pot.count }),
  }));
  return { ...kitchen, canners: [...(kitchen.canners ?? []), ...canners] };
}
