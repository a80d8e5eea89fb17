/** The tables of yields: what preparing leaves, and what jars and packs take. */
import * as z from 'zod/mini';
import canningJson from '../../../data/produce/canning-yields.json';
import customaryJson from '../../../data/produce/containers-customary.json';
import containerFruitJson from '../../../data/produce/containers-fruit.json';
import guideJson from '../../../data/produce/edible-buying-guide.json';
import culinaryJson from '../../../data/produce/edible-culinary.json';
import ersJson from '../../../data/produce/edible-ers2022.json';
import extensionJson from '../../../data/produce/edible-extension.json';
import sr28Json from '../../../data/produce/edible-sr28.json';
import frozenFruitJson from '../../../data/produce/frozen-yields-fruit.json';
import frozenVegetableJson from '../../../data/produce/frozen-yields-vegetable.json';
import poundsJson from '../../../data/produce/pounds-per-unit.json';
import sievedJson from '../../../data/produce/sieved-yields.json';
import { forReaders, id, positive, type RowOf, sourcedColumns, text } from '../../sources/columns';
import { asTable } from '../../sources/table';
import { ndb, PREPARATIONS, pair, percent } from '../columns';

const preparation = () => z.enum(PREPARATIONS);

export const refuseRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    preparation: preparation(),
    ndb: ndb(),
    description: forReaders(text()),
    refusePct: percent(),
    ediblePct: percent(),
    refuseIs: forReaders(z.nullable(text())),
    refuse: z.exactOptional(z.array(z.strictObject({ what: text(), pct: percent() }))),
    ...sourcedColumns(),
  });
/** Trimming as a share of what was bought. */
export const trimRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    preparation: preparation(),
    printed: forReaders(text()),
    trimLossPct: z.exactOptional(percent()),
    ediblePct: percent(),
    ...sourcedColumns(),
  });
export const factorRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    form: z.exactOptional(id()),
    printed: forReaders(text()),
    state: z.enum(['fresh', 'frozen', 'canned', 'dried']),
    yieldFactor: z.number().check(z.minimum(0.3), z.maximum(2.6)),
    cupEquivalent_lb: z.number().check(z.minimum(0.1), z.maximum(0.6)),
    preparation: z.exactOptional(preparation()),
    cooked: z.exactOptional(z.boolean()),
    ...sourcedColumns(),
  });
export const canningRow = () =>
  z.strictObject({
    id: forReaders(id()),
    foods: z.array(id()),
    forms: z.array(id()),
    anyCut: z.exactOptional(z.literal(true)),
    printed: text(),
    lbPer7Quarts: z.exactOptional(positive()),
    lbPer7QuartsRange: z.exactOptional(pair()),
    lbPer9Pints: z.exactOptional(positive()),
    lbPer9PintsRange: z.exactOptional(pair()),
    lbPer9HalfPints: z.exactOptional(positive()),
    lbPerQuart: z.exactOptional(positive()),
    lbPerQuartMax: z.exactOptional(positive()),
    lbPerPint: z.exactOptional(positive()),
    container: z.exactOptional(text()),
    containerLb: z.exactOptional(positive()),
    containerJars: z.exactOptional(pair()),
    containerJar: z.exactOptional(z.enum(['quart', 'pint'])),
    ...sourcedColumns(),
  });
/** Quarts from a container, or pounds a quart, as low and high. */
export const quartsRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    printed: forReaders(text()),
    container: text(),
    called: z.exactOptional(z.array(text())),
    lb: pair(),
    quarts: z.exactOptional(pair()),
    lbPerQuart: z.exactOptional(pair()),
    forms: z.exactOptional(z.array(id())),
    anyCut: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
export const containerFruitRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    container: text(),
    called: z.exactOptional(z.array(text())),
    lb: pair(),
    qt_canned: z.exactOptional(pair()),
    sauce_qt_canned: z.exactOptional(pair()),
    sauce_qt_frozen: z.exactOptional(pair()),
    pt_frozen: z.exactOptional(pair()),
    juice_qt: z.exactOptional(pair()),
    ...sourcedColumns(),
  });
export const poundsRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    lbPerQtCanned: z.exactOptional(pair()),
    lbPerPtFrozen: z.exactOptional(pair()),
    lbPerCup: z.exactOptional(positive()),
    cupForm: z.exactOptional(id()),
    ...sourcedColumns(),
  });
export const frozenRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    container: z.nullable(text()),
    lb: z.nullable(positive()),
    pt_frozen: pair(),
    perPintFrozen: pair(),
    perPintUnit: z.enum(['lb', 'pint', 'quart']),
    ...sourcedColumns(),
  });
export const sievedRow = () =>
  z.strictObject({
    id: id(),
    food: id(),
    printed: forReaders(text()),
    sieved_lb: positive(),
    asPurchased_lb: positive(),
    ...sourcedColumns(),
  });

export type RefuseRow = RowOf<typeof refuseRow>;
export type TrimRow = RowOf<typeof trimRow>;
export type FactorRow = RowOf<typeof factorRow>;
export type CanningRow = RowOf<typeof canningRow>;
export type QuartsRow = RowOf<typeof quartsRow>;
export type ContainerFruitRow = RowOf<typeof containerFruitRow>;
export type PoundsRow = RowOf<typeof poundsRow>;
export type FrozenRow = RowOf<typeof frozenRow>;
export type SievedRow = RowOf<typeof sievedRow>;

export const refuseRows = asTable<RefuseRow>(sr28Json).rows;
export const trimTables = [
  asTable<TrimRow>(extensionJson).rows,
  asTable<TrimRow>(culinaryJson).rows,
  asTable<TrimRow>(guideJson).rows,
];
export const factorRows = asTable<FactorRow>(ersJson).rows;
export const canningRows = asTable<CanningRow>(canningJson).rows;
export const customaryRows = asTable<QuartsRow>(customaryJson).rows;
export const containerFruitRows = asTable<ContainerFruitRow>(containerFruitJson).rows;
export const poundsRows = asTable<PoundsRow>(poundsJson).rows;
export const frozenRows = [
  ...asTable<FrozenRow>(frozenFruitJson).rows,
  ...asTable<FrozenRow>(frozenVegetableJson).rows,
];
export const sievedRows = asTable<SievedRow>(sievedJson).rows;
