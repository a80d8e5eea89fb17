import type { Basis, Caution } from '../../sources/basis';
import { massOf } from '../makes/making';
import { type Kept, NOISE } from '../program/decide';
import type { Prepared } from '../program/prepare';
import type { KnownLot } from '../request/lots';
import type { LotShare } from '../request/plannedProduct';

/** Less than a gram of a lot is none. */
const LEAST = 1e-3;

/** Some kg of each lot, where it is any. */
const sharesOf = ({ day }: Prepared, kgOf: (lot: KnownLot) => number): [LotShare, KnownLot][] =>
  day.lots.flatMap((lot): [LotShare, KnownLot][] => {
    const kg = kgOf(lot);
    return kg > LEAST ? [[{ lot: lot.label, food: lot.trade, raw: massOf(day, kg) }, lot]] : [];
  });
const shares = (prepared: Prepared, kgOf: (lot: KnownLot) => number): LotShare[] =>
  sharesOf(prepared, kgOf).map(([share]) => share);

/** Kg of a lot in one product: by the product's own measure, and beside the food that it is measured by. */
export function kgInto({ making: { activity }, decided }: Kept, index: number): number {
  if (activity.madeOf !== 'fruit') return 0;
  const beside = (activity.also ?? []).filter(({ lot }) => lot === index);
  const perUnit = beside.reduce((sum, { kgPerUnit }) => sum + kgPerUnit, 0);
  return (decided.rawByLot.get(index) ?? 0) + perUnit * decided.ready;
}

const usedOf = (kept: readonly Kept[], { index }: KnownLot): number =>
  kept.reduce((sum, each) => sum + kgInto(each, index), 0);

/** Kg of a lot that go into no product, though they could have. */
export const kgLeft = (kept: readonly Kept[], lot: KnownLot): number => lot.usableKg - usedOf(kept, lot);

/** The same of each lot that has some left. */
export const leftShares = (prepared: Prepared, kept: readonly Kept[]): [LotShare, KnownLot][] =>
  sharesOf(prepared, (lot) => kgLeft(kept, lot));

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
