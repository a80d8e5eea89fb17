/** What a cook's own moisture or thickness may not change: dried food keeps on the shelf only as dry as its page dries it. */
import { STRIP } from '../../drying/guide/jerkySteps';
import { driestMoisture, usualMoisture } from '../../drying/moisture/targetMoisture';
import { formatQuantity } from '../../quantity/formatQuantity';
import { valueIn } from '../../quantity/scale';
import type { StepRow } from '../../recipes/rows/tables';
import type { Product } from './making';
import { type LeftOutProduct, leftOut } from './making';

const percent = (share: number): string => `${Number((100 * share).toFixed(2))} %`;

/** Why a product on trays is not as dry or as thin as its recipe; nothing where it is, or where the cook leaves it to the recipe. */
export function notAsPrinted(
  { wanted, row }: Product,
  last: StepRow | undefined,
  guided: number | undefined,
): LeftOutProduct | undefined {
  const { moisture, thickness } = wanted;
  if (row.makes === 'jerky' && thickness !== undefined && valueIn(thickness, 'in') > valueIn(STRIP, 'in') + 1e-9) {
    const most = formatQuantity(STRIP);
    const text = `${row.name} is for strips of ${most} or less: thicker meat stays raw and wet inside`;
    return leftOut(wanted, { code: 'too-thick', text, instead: `slice it ${most} thick or less` });
  }
  const most = wettest(row.makes, last, guided);
  if (moisture === undefined || moisture <= most + 1e-9) return undefined;
  const text = `at ${percent(moisture)} of water ${row.name} can mold: these tables dry it to ${percent(most)}`;
  return leftOut(wanted, { code: 'too-wet', text, instead: 'leave `moisture` off, or freeze it' });
}

/** The most water that a recipe leaves: as printed, or the usual end of what is dried so. */
function wettest(makes: Product['row']['makes'], last: StepRow | undefined, guided: number | undefined): number {
  const printed = typeof last?.moisture === 'number' ? last.moisture : last?.moisture?.high;
  if (printed !== undefined) return printed;
  if (makes === 'leather') return usualMoisture('fruit', 'drying').moisture;
  if (makes === 'dried') return guided ?? usualMoisture('vegetable', 'drying').moisture;
  return driestMoisture('drying').moisture;
}
