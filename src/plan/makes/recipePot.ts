/** The pot of a recipe that is measured in batches or jars: what goes in besides the food, and how much room it takes. */
import { formatQuantity } from '../../quantity/formatQuantity';
import { quantityIn } from '../../quantity/scale';
import { customary } from '../figures/customary';
import { roomTaken } from '../kitchen/fillOf';
import { type Filling, isAlone } from './amounts';
import type { Product } from './making';
import { type Day, type LeftOutProduct, leftOut } from './making';
import { cookedInPot, type PotWorked, roomiestPot } from './pots';
import { litersBeside, type Parts } from './recipe';
import type { RecipeWork } from './work';

/** Liters of one batch in its pot, with the room to foam. */
function litersOfBatch(day: Day, { row }: Product, { batch }: Filling, parts: Parts): number {
  if (batch === undefined) return 0;
  const beside = litersBeside(parts, batch.jars.high / batch.kg, 1) * batch.kg;
  return room(day, row.makes) * (batch.kg / customary('pot-density') + beside);
}

const room = ({ request }: Day, makes: Product['row']['makes']): number => roomTaken(request.kitchen.pots ?? [], makes);

const batchesPerKg = ({ batch, lots }: Filling): number =>
  batch === undefined ? 0 : Math.min(...lots.map(({ given }) => (batch.of === 'raw' ? 1 : given.ready.low) / batch.kg));

/** Why no pot here takes one whole batch of a recipe that is cooked batch by batch. */
export function noPotFor(day: Day, product: Product, filling: Filling, parts: Parts): LeftOutProduct | undefined {
  const { wanted, row } = product;
  if (filling.batch === undefined || !isAlone(row)) return undefined;
  const liters = litersOfBatch(day, product, filling, parts);
  if (roomiestPot(day) >= liters) return undefined;
  const need = formatQuantity(quantityIn<'volume'>(liters, 'L', day.metric ? 'L' : 'quart'), { rounding: 'up' });
  return leftOut(wanted, {
    code: 'no-pot-for-batch',
    text: `no pot here holds one batch of ${row.name}, which needs ${need} with the room to foam, and it is cooked whole`,
    instead: 'name a larger pot, or freeze the fruit',
  });
}

/** The pot that a recipe cooks in, for each raw kg; a raw pack heats what it is covered with, and not the food. */
export function recipePot(
  day: Day,
  product: Product,
  {
    work,
    filling,
    parts,
    withFood,
    syrup = 0,
  }: {
    readonly work: RecipeWork;
    readonly filling: Filling;
    readonly parts: Parts;
    readonly withFood: boolean;
    /** Liters of syrup for each jar. */
    readonly syrup?: number;
  },
): PotWorked | undefined {
  const { row } = product;
  const pot = work.pot ?? (syrup > 0 ? SYRUP_ALONE : undefined);
  if (pot === undefined) return undefined;
  const rich = Math.max(...filling.lots.map(({ units }) => units.high));
  const ready = Math.max(...filling.lots.map(({ given }) => given.ready.high));
  const dropped = Math.min(...filling.lots.map(({ given }) => given.trimmings.low));
  const food = withFood ? (1 - dropped) / customary('pot-density') : 0;
  const inPot = withFood && pot.cookedWhole ? 1 / customary('pot-density') : food;
  const plain = litersBeside(parts, rich, ready);
  const beside = plain + rich * syrup;
  // what pieces leave between them takes the syrup up, and the room above them the rest of it
  const atop = inPot > 0 ? plain : beside;
  if (food + beside <= 0) return undefined;
  const boiledOff = pot.boilsDown ? Math.max(0, food + beside - rich * parts.liters) : 0;
  const alone = isAlone(row) && filling.batch !== undefined;
  const batchLiters = litersOfBatch(day, product, filling, parts);
  return cookedInPot(day, product, pot, {
    litersPerKg: alone ? batchLiters * batchesPerKg(filling) : room(day, row.makes) * (inPot + atop),
    kgPerKg: food + beside,
    boiledOffPerKg: boiledOff,
    ...(alone ? { batchLiters } : {}),
  });
}

/** A raw pack is covered with boiling syrup, and nothing else is on the stove. */
const SYRUP_ALONE: NonNullable<RecipeWork['pot']> = {
  minutes: customary('syrup-boil'),
  printed: 0,
  stirred: false,
  boilsDown: false,
  cookedWhole: false,
};
