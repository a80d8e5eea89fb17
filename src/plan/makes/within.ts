/** Where an error of another module stands in the request. */
import { atPath, joinPath, StillroomError } from '../../errors/StillroomError';

/** What other modules' fields are called in the request. */
const OWN_NAMES: ReadonlyMap<string, string> = new Map([
  ['food', 'from'],
  ['targetMoisture', 'moisture'],
  ['brix', 'finishSolids'],
  ['mass', 'packSize'],
  ['elevation', 'kitchen.elevation'],
  ['burnerPower', 'kitchen.burnerPower'],
  ['jars', 'kitchen.canners'],
  ['waterVolume', 'kitchen.canners'],
  ['area', 'kitchen.dryer.trayArea'],
  ['machine', 'kitchen.freezeDryer'],
]);

/** Puts the product's place before the path of an error that another module throws for one of its fields. */
export function within<T>(product: number, work: () => T): T {
  try {
    return work();
  } catch (error) {
    // what is in its place already stays there
    if (!(error instanceof StillroomError) || error.path.startsWith(PRODUCTS)) throw error;
    const [field = ''] = error.path.split('.');
    const own = OWN_NAMES.get(field) ?? field;
    throw atPath(error, own.startsWith('kitchen.') ? own : joinPath(`${PRODUCTS}${product}]`, own));
  }
}
const PRODUCTS = 'products[';
