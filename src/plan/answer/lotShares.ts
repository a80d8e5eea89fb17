import type { Basis, Caution } from '../../sources/basis';
import { massOf } from '../makes/making';
import { type Kept, NOISE } from '../program/decide';
import type { Prepared } from '../program/prepare';
import type { KnownLot } from '../request/lots';
import type { LotShare } from '../request/plannedProduct';

/** Less than a gram of a lot is none. */
const LEAST = 1e-3;

/** So many kg of each lot, where it is any. */
const shares = ({ day }: Prepared, kgOf: (lot: KnownLot) => number): LotShare[] =>
  day.lots.flatMap((lot) => {
    const kg = kgOf(lot);
    return kg > LEAST ? [{ lot: lot.label, food: lot.trade, raw: massOf(day, kg) }] : [];
  });

/** Kg of a lot in all products: in those made of it, and in those that take some of it besides. */
const usedOf = (kept: readonly Kept[], { index }: KnownLot): number =>
  kept.reduce((sum, { making: { activity }, decided }) => {
    const own = activity.madeOf === 'fruit' ? (decided.rawByLot.get(index) ?? 0) : 0;
    const besides = (activity.also ?? []).filter(({ lot }) => lot === index);
    return besides.reduce((all, { kgPerUnit }) => all + kgPerUnit * decided.ready, sum + own);
  }, 0);

/** What goes into no product, though it could have. */
export const leftFresh = (prepared: Prepared, kept: readonly Kept[]): LotShare[] =>
  shares(prepared, (lot) => lot.usableKg - usedOf(kept, lot));

/** What the cook puts aside to eat fresh. */
export const keptFresh = (prepared: Prepared): LotShare[] => shares(prepared, ({ keepFreshKg }) => keepFreshKg);

/** What is thrown away. */
export const notSound = (prepared: Prepared): LotShare[] => shares(prepared, ({ notSoundKg }) => notSoundKg);

/** Where the weights of lots come from that nobody weighed, of those that go into something. */
export function lotsSaid({ day }: Prepared, kept: readonly Kept[]) {
  const used = day.lots.filter((lot) => usedOf(kept, lot) > NOISE);
  return {
    basis: used.flatMap(({ basis }): readonly Basis[] => basis),
    cautions: used.flatMap(({ cautions }): readonly Caution[] => cautions),
  };
}
