import type { Activity, Cook } from '../../request/activity';
import { batches, wholeBatches } from '../decisions';
import { bound, type DayTerm, type Draft, decide, limit, scaled, use } from '../draft';

/** Batches in each pot: their room, and the minutes that pot, burner and hands are busy with them. */
export function pots(draft: Draft, activity: Activity): void {
  const { product, cook } = activity;
  if (cook === undefined) return;
  const { capacity } = draft;
  const { litresPerKg, batchLitres, minutes, minutesPerKg = 0, stirred, costPerBatch = 0 } = cook;
  // a whole batch needs a pot for itself, however large the pot
  const room = capacity.pots.map((litres, pot): DayTerm => {
    const held = batchLitres === undefined ? litres : litres >= batchLitres ? 1 : 0;
    return [batches(product, pot), held];
  });
  const taken: DayTerm[] =
    batchLitres === undefined ? scaled(activity, () => -litresPerKg) : [[wholeBatches(product), -1]];
  for (const [batch] of room) decide(draft, batch);
  bound(draft, { of: 'room in pots', product }, [...room, ...taken], { min: 0 });
  capacity.pots.forEach((_, pot) => {
    const busy: DayTerm = [batches(product, pot), minutes];
    use(draft, { of: 'pot', pot }, busy);
    if (capacity.vessels?.includes(pot)) use(draft, { of: 'vessel', pot }, busy);
    use(draft, { of: 'burners' }, busy);
    use(draft, { of: 'all pots' }, busy);
    if (stirred) use(draft, { of: 'hands' }, busy);
    draft.counts.cost.push([batches(product, pot), costPerBatch]);
  });
  byWeight(draft, activity, minutesPerKg);
  blanchingWater(draft, product, cook);
}

/** What heats up or boils down by its weight: which pot that is in is left open. */
function byWeight(draft: Draft, activity: Activity, minutesPerKg: number): void {
  if (minutesPerKg === 0) return;
  const minutes = scaled(activity, () => minutesPerKg);
  use(draft, { of: 'burners' }, ...minutes);
  use(draft, { of: 'all pots' }, ...minutes);
  if (activity.cook?.stirred) use(draft, { of: 'hands' }, ...minutes);
}

/** The water of a blanching costs what heating it does: once at least, where the aim pays for it. */
function blanchingWater(draft: Draft, product: number, { minutes, blanch }: Cook): void {
  const { weights, capacity, counts } = draft;
  if (weights.money === 0 || blanch?.cost === undefined || blanch.cost === 0) return;
  const water = { of: 'water', product } as const;
  decide(draft, water);
  counts.cost.push([water, blanch.cost]);
  // an hour or a batch more than the day has, for what one more would give (see `limits`)
  const most = (capacity.minutes + Math.max(60, minutes)) * capacity.pots.length;
  bound(
    draft,
    { of: 'water before batches', product },
    [...capacity.pots.map((_, pot): DayTerm => [batches(product, pot), -minutes]), [water, most]],
    { min: 0 },
  );
}

export const burnersHeld = (draft: Draft): void =>
  limit(draft, { of: 'burners' }, draft.capacity.burners * draft.capacity.minutes);

export function potsHeld(draft: Draft): void {
  const { pots: all, minutes } = draft.capacity;
  limit(draft, { of: 'all pots' }, all.length * minutes);
  all.forEach((_, pot) => {
    limit(draft, { of: 'pot', pot }, minutes);
  });
  all.forEach((_, pot) => {
    limit(draft, { of: 'vessel', pot }, minutes);
  });
}
