/** The process tables as `data/process/` holds them, one row shape for all. */
import acidTable from '../../data/process/acid.json';
import bandTable from '../../data/process/elevation-bands.json';
import foodTable from '../../data/process/foods.json';
import fruitTable from '../../data/process/fruit.json';
import jamTable from '../../data/process/jam.json';
import notRecommendedTable from '../../data/process/not-recommended.json';
import pickleTable from '../../data/process/pickle.json';
import scopeTable from '../../data/process/scopes.json';
import lowAcidTable from '../../data/process/tomato-low-acid.json';
import type { Named } from '../common/names';
import { asTable, type Sourced } from '../sources/table';
import type { Pack } from '../words/pack';

/** The canners that a process is printed for. */
export type PrintedMethod = 'boiling-water' | 'dial-gauge' | 'weighted-gauge';
/** Jar sizes that the tables print, from the smallest up. */
export const LISTED_JARS = ['half-pint', 'pint', 'quart', 'half-gallon'] as const;
export type ListedJar = (typeof LISTED_JARS)[number];
/** Ways of keeping food that are not canning. */
export type Keep = 'freeze' | 'dry' | 'refrigerate' | 'ferment' | 'eat fresh';

/** One printed line of a process table. */
export interface ProcessRow extends Sourced {
  readonly food: string;
  readonly form: string;
  /** `null` where the source states none. */
  readonly pack: Pack | null;
  readonly jars: readonly ListedJar[];
  readonly method: PrintedMethod;
  /** Which of the lines printed as alternatives. */
  readonly alternative?: string;
  readonly jarState?: string;
  /** Boiling water: minutes by elevation band. Pressure: minutes at every elevation. */
  readonly minutes: number | readonly number[];
  /** Gauge pressure by elevation band; `null` where it is refused. */
  readonly psi?: readonly (number | null)[];
  /** Inches. */
  readonly headspace: number;
  /** Id of the acid that the process requires. */
  readonly acid?: string;
  readonly pasteurize?: boolean;
  /** Band index -> why that cell is not served. */
  readonly refused?: Readonly<Record<string, string>>;
  /** What each copy prints, where copies disagree; the row serves the safer figure. */
  readonly printed?: readonly {
    readonly minutes?: number | readonly number[];
    readonly psi?: readonly number[];
    readonly source: string | null;
    /** Why a longer time or higher pressure of this copy is not followed. */
    readonly notServed?: 'older edition' | 'copying fault';
  }[];
  /** Least minutes on high heat with the vent open, before the venting. */
  readonly leastHeatUp?: number;
  readonly cautions?: readonly string[];
}

/** Acid that a process requires: amounts for each jar, or for the recipe. */
export interface AcidRow extends Sourced {
  readonly id: string;
  readonly jar?: ListedJar;
  readonly where: 'each jar' | 'recipe';
  readonly choose: 'one' | 'all';
  readonly bottledLemonJuice?: string;
  readonly citricAcid?: string;
  readonly vinegar?: string;
  readonly per?: string;
  /** Other bottled juice that may take its place, in the same amount. */
  readonly standIn?: readonly string[];
  /** Acid that never takes its place. */
  readonly never?: readonly string[];
  readonly also?: string;
  /** What each copy prints, where copies disagree; the row serves the largest amount. */
  readonly printed?: readonly { readonly bottledLemonJuice: string; readonly source: string }[];
}

/** A food by its trade name, and its own forms with their other names. */
export interface FoodEntry extends Named {
  readonly forms?: Readonly<Record<string, readonly string[]>>;
  /** Names that stand for food and form together: `applesauce`. */
  readonly alone?: Readonly<Record<string, readonly string[]>>;
  /** Whether the name stands for several foods, each of which a page must name: `berry`, `fruit`. */
  readonly wide?: boolean;
  /** The wider foods it is one of. What is refused for those is refused for it; no process comes from them. */
  readonly of?: readonly string[];
}

/** The foods that the page of a process names. */
export interface ScopeRow extends Sourced {
  readonly food: string;
  /** Every form where left out. */
  readonly form?: string;
  readonly pack?: Pack;
  /** Foods that the page is for as such. */
  readonly foods: readonly string[];
  /** Foods that the page names as what the product is made of: strawberries in a jam. */
  readonly madeOf?: readonly string[];
  /** Foods that the page, or later guidance, leaves out. */
  readonly excludes?: readonly string[];
  readonly cautions?: readonly string[];
}

/** A food or form that is not canned. */
export interface NotRecommendedRow extends Sourced {
  readonly foods: readonly string[];
  /** `any`; `plain`, which is every form but the tested ones; or the forms meant. */
  readonly forms: readonly string[];
  readonly pack?: Pack;
  readonly jar?: ListedJar;
  readonly quality?: boolean;
  readonly reason: string;
  readonly instead: string;
  /** Ways of keeping it that are not canning. */
  readonly keeps: readonly Keep[];
  /** Whether `instead` speaks of canning it another way. */
  readonly cans?: boolean;
}

export interface BandRow extends Sourced {
  readonly method: PrintedMethod;
  /** Upper end of each band in feet, inclusive; `null` is open. */
  readonly upToFt: readonly (number | null)[];
  /** Above this elevation in feet the air is too thin for the highest pressure printed. */
  readonly thinAirFt?: number;
}

export const processRows: readonly ProcessRow[] = [fruitTable, lowAcidTable, pickleTable, jamTable].flatMap(
  (table) => asTable<ProcessRow>(table).rows,
);
export const acidRows = asTable<AcidRow>(acidTable).rows;
export const foods = foodTable as readonly FoodEntry[];
export const notRecommendedRows = asTable<NotRecommendedRow>(notRecommendedTable).rows;
export const scopeRows = asTable<ScopeRow>(scopeTable).rows;
export const bandRows = asTable<BandRow>(bandTable).rows;

/** The rows of a food and form, whatever the jar and method. */
export function rowsOf(food: string, form: string): readonly ProcessRow[] {
  return processRows.filter((row) => row.food === food && row.form === form);
}
