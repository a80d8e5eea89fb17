/** The published tables of freezing, with their row types; the tests prove each against its schema. */
import beforeTable from '../../data/freezing/before-freezing.json';
import blanchingTable from '../../data/freezing/blanching.json';
import blanchingRecalledTable from '../../data/freezing/blanching-recalled.json';
import blanchingWaterTable from '../../data/freezing/blanching-water.json';
import cautionTable from '../../data/freezing/cautions.json';
import componentTable from '../../data/freezing/component-polynomials.json';
import constantTable from '../../data/freezing/constants.json';
import correlationTable from '../../data/freezing/correlations.json';
import recalledPointTable from '../../data/freezing/freezing-points-recalled.json';
import packTable from '../../data/freezing/fruit-packs.json';
import recalledPackTable from '../../data/freezing/fruit-packs-recalled.json';
import headspaceTable from '../../data/freezing/headspace.json';
import shapeTable from '../../data/freezing/plank-shapes.json';
import ruleTable from '../../data/freezing/rules.json';
import textbookTable from '../../data/freezing/thermal-textbook.json';
import usUnitTable from '../../data/freezing/thermal-us-units.json';
import vegetableTable from '../../data/freezing/thermal-vegetables.json';
import type { Caution } from '../sources/basis';
import { asTable, type Sourced } from '../sources/table';

/** The two ends of a printed range; equal where one figure is printed. */
export type Ends = readonly [low: number, high: number];

export interface RuleRow extends Sourced {
  readonly rule: string;
  readonly about: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}
export interface HeadspaceRow extends Sourced {
  readonly pack: 'liquid' | 'dry' | 'juice';
  readonly opening: 'wide' | 'narrow';
  readonly size: 'pint' | 'quart';
  readonly inches: number;
}
export interface PackRow extends Sourced {
  /** Ids of the foods. */
  readonly foods: readonly string[];
  readonly pack: 'syrup' | 'sugar' | 'dry' | 'puree' | 'unsweetened' | 'water' | 'juice' | 'sauce';
  readonly syrupPercent?: Ends;
  readonly sugarCups?: Ends;
  readonly perCups?: number;
  readonly quartLb?: number;
  readonly partsFruitToSugar?: number;
  readonly lemonJuiceTspPerQuart?: number;
  readonly ascorbicTsp?: number;
  readonly ascorbicPerQuartOf?: 'syrup' | 'fruit' | 'water';
  readonly ascorbicInTbspWater?: number;
  readonly steamInsteadMinutes?: Ends;
  readonly preheatMinutes?: Ends;
  readonly preheatIn?: string;
}
export interface BlanchingRow extends Sourced {
  /** Id of the food. */
  readonly food: string;
  /** Ids of the forms it holds for, the printed one first; absent where it holds for the food in general. */
  readonly forms?: readonly string[];
  readonly printed: string;
  readonly waterMinutes: Ends | null;
  readonly steamMinutes: Ends | null;
  readonly coolingTimes?: number;
  readonly leafy?: boolean;
  readonly whenNamed?: boolean;
}
export interface BlanchingWaterRow extends Sourced {
  readonly food: string;
  readonly forms?: readonly string[];
  readonly printed: string;
  readonly amount: string | null;
  readonly waterQuarts: number | null;
  readonly waterMinutes: Ends;
}
export interface BeforeFreezingRow extends Sourced {
  readonly food: string;
  readonly forms?: readonly string[];
  readonly printed: string;
  readonly treatment: 'cook' | 'raw';
  readonly minutes?: Ends;
  readonly size?: string;
}
export interface ThermalRow extends Sourced {
  /** Id of the food. */
  readonly food: string;
  readonly printed: string;
  /** degC */
  readonly initialFreezing: number;
  /** percent */
  readonly water: number;
  readonly protein?: number;
  readonly fat?: number;
  readonly carbohydrate?: number;
  readonly fibre?: number;
  readonly ash?: number;
  /** kJ/(kg K) */
  readonly specificHeatAbove: number;
  readonly specificHeatBelow: number;
  /** kJ/kg */
  readonly latentHeat: number;
}
export interface UsUnitRow extends Sourced {
  /** Id of the food. */
  readonly food: string;
  readonly printed: string;
  /** degF */
  readonly initialFreezingF: number;
  /** Btu/(lb degF) */
  readonly specificHeatAboveBtu: number;
  readonly specificHeatBelowBtu: number;
  /** Btu/lb */
  readonly latentHeatBtu: number;
}
export interface RecalledPointRow extends Sourced {
  /** Id of the food. */
  readonly food: string;
  readonly printed: string;
  readonly initialFreezing: number;
}
export interface ComponentRow extends Sourced {
  readonly component: string;
  readonly property: 'density' | 'specificHeat' | 'conductivity';
  readonly unit: string;
  readonly a0: number;
  readonly a1: number;
  readonly a2: number;
}
export interface CorrelationRow extends Sourced {
  readonly id: string;
  readonly formula: string;
  readonly units: string;
}
export interface ShapeRow extends Sourced {
  readonly shape: 'slab' | 'cylinder' | 'sphere';
  readonly P: number;
  readonly R: number;
  readonly length: string;
}
export interface ConstantRow extends Sourced {
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
}

export const RULES = asTable<RuleRow>(ruleTable).rows;
export const HEADSPACE = asTable<HeadspaceRow>(headspaceTable).rows;
export const PACKS: readonly PackRow[] = [
  ...asTable<PackRow>(packTable).rows,
  ...asTable<PackRow>(recalledPackTable).rows,
];
export const BLANCHING: readonly BlanchingRow[] = [
  ...asTable<BlanchingRow>(blanchingTable).rows,
  ...asTable<BlanchingRow>(blanchingRecalledTable).rows,
];
export const BLANCHING_WATER = asTable<BlanchingWaterRow>(blanchingWaterTable).rows;
export const BEFORE_FREEZING = asTable<BeforeFreezingRow>(beforeTable).rows;
export const THERMAL_VEGETABLES = asTable<ThermalRow>(vegetableTable).rows;
export const THERMAL_US = asTable<UsUnitRow>(usUnitTable).rows;
export const THERMAL_TEXTBOOK = asTable<ThermalRow>(textbookTable).rows;
export const RECALLED_POINTS = asTable<RecalledPointRow>(recalledPointTable).rows;
export const COMPONENTS = asTable<ComponentRow>(componentTable).rows;
export const CORRELATIONS = asTable<CorrelationRow>(correlationTable).rows;
export const SHAPES = asTable<ShapeRow>(shapeTable).rows;
export const CONSTANTS = asTable<ConstantRow>(constantTable).rows;

/** The rule of this fixed name; names come from our own code, so a missing one is met by every test. */
export function rule(id: string): RuleRow {
  const found = RULES.find((row) => row.rule === id);
  if (found === undefined) throw new Error(`no freezing rule ${id}`);
  return found;
}

/** The formula of this fixed name. */
export function correlation(id: string): CorrelationRow {
  const found = CORRELATIONS.find((row) => row.id === id);
  if (found === undefined) throw new Error(`no correlation ${id}`);
  return found;
}

const cautions = cautionTable as readonly Caution[];
/** A caution of this module. */
export function freezingCaution(id: string): Caution {
  const found = cautions.find((entry) => entry.id === id);
  if (found === undefined) throw new Error(`no caution ${id}`);
  return found;
}
