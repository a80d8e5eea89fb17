import type { Activity } from '../request/activity';
import { batches, freezeTrays, loads, promised, readied, trays } from './decisions';
import { bound, type DayTerm, type Draft } from './draft';
import { mostUnits } from './resources/units';

/** Rounding matters little, and the cuts are left out, where more units than this can be promised. */
const MOST_STEPS = 400;

/**
 * Rounding makes whole jars, trays and batches of every whole unit promised. The straight lines under these steps add
 * nothing that the program does not say already of whole numbers, but they guide the relaxation, so the search is short.
 */
export function roundingCuts(draft: Draft): void {
  for (const activity of draft.activities) cutsOf(draft, activity);
}

function cutsOf(draft: Draft, activity: Activity): void {
  const { capacity } = draft;
  const { product, supplies, cook, traysPerKg, freezeDry } = activity;
  const low = Math.max(...supplies.map(({ unitsPerKg }) => unitsPerKg.low));
  if (!(low > 0)) return;
  const rich = Math.min(...supplies.map(({ unitsPerKg }) => unitsPerKg.high / unitsPerKg.low));
  const most = mostUnits(activity, capacity, rich);
  if (most > MOST_STEPS) return;
  const kg = 1 / low;
  const under = (what: string, terms: readonly DayTerm[], steps: (units: number) => number): void =>
    stepLines(steps, most).forEach(([slope, offset], line) => {
      bound(draft, { of: 'rounded', what, product, line }, [...terms, [promised(product), -slope]], { min: offset });
    });
  const each = (perUnit: number) => (units: number) => Math.ceil(perUnit * units - 1e-6);
  loadCuts(draft, activity, rich, under);
  under('ready', [[readied(product), 1]], each(rich));
  if (traysPerKg !== undefined) under('trays', [[trays(product), 1]], each(kg * traysPerKg));
  if (freezeDry !== undefined)
    under('freeze-dryer trays', [[freezeTrays(product), 1]], each(kg * freezeDry.traysPerKg));
  const litres = Math.max(0, ...capacity.pots);
  if (cook !== undefined && litres > 0) {
    const all = capacity.pots.map((_, pot): DayTerm => [batches(product, pot), 1]);
    under('batches', all, each((kg * cook.litresPerKg) / litres));
  }
}

/** Whole loads of a process that only one product has. */
function loadCuts(
  { activities }: Draft,
  { canning }: Activity,
  rich: number,
  under: (what: string, terms: readonly DayTerm[], steps: (units: number) => number) => void,
): void {
  if (canning === undefined) return;
  if (activities.filter((other) => other.canning?.key === canning.key).length > 1) return;
  const jars = Math.max(1, ...canning.canners.map((canner) => canner.jars));
  under(
    'loads',
    canning.canners.map(({ canner }): DayTerm => [loads(canning.key, canner), 1]),
    (units) => Math.ceil(Math.ceil(rich * units - 1e-6) / jars),
  );
}

/** The lines under the steps `ceil(perUnit * n)` for n from 0 to `most`: their lower convex hull, as [slope, offset]. */
export function stepLines(steps: (units: number) => number, most: number): [slope: number, offset: number][] {
  const corners: [number, number][] = [];
  for (let n = 0; n <= most; n++) {
    const point: [number, number] = [n, steps(n)];
    while (corners.length >= 2) {
      const [[x0, y0], [x1, y1]] = corners.slice(-2) as [[number, number], [number, number]];
      if ((y1 - y0) * (point[0] - x0) < (point[1] - y0) * (x1 - x0)) break;
      corners.pop();
    }
    corners.push(point);
  }
  return corners.slice(1).map(([x1, y1], index) => {
    const [x0, y0] = corners[index] as [number, number];
    const slope = (y1 - y0) / (x1 - x0);
    return [slope, y0 - slope * x0];
  });
}
