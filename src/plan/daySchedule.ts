/** The order of work of a day, as the plan answers it. Minutes count from the start of the first day. */
export interface DaySchedule {
  /** In the order of their starts. */
  readonly tasks: readonly ScheduledTask[];
  /** The hours of work; between two of them only what needs nobody goes on. */
  readonly windows: readonly Window[];
  /** When the last work of hands, pots and canners ends. */
  readonly makespan: number;
  /** No order of the same work ends before this. */
  readonly lowerBound: number;
  /** How much longer than that the order found is, against the bound. */
  readonly gap: number;
  /** When the last dryer, freeze-dryer or freezer load is done. */
  readonly allDone: number;
}

export interface Window {
  readonly from: number;
  readonly to: number;
}

export type TaskKind =
  | 'heat canner' // water in a canner, before its first load of a day
  | 'prepare' // washing, peeling, cutting
  | 'cook'
  | 'fill' // jars filled, wiped, lidded; bags and boxes packed; trays spread
  | 'can' // one canner load, jars in to jars out
  | 'dry'
  | 'freeze-dry'
  | 'freeze'
  | 'pack'; // what comes dry off its trays

export interface ScheduledTask {
  readonly kind: TaskKind;
  /** In the words of the stove: `14 lb of marked-down peaches for peach halves in quart jars`. */
  readonly what: string;
  /** The products that it is for. */
  readonly products: readonly string[];
  readonly start: number;
  readonly end: number;
  readonly uses: readonly Use[];
  /** Whether it goes on by itself, overnight as well. */
  readonly unattended: boolean;
}

/** What a task keeps busy from its start to its end: `hands` 2, `burners` 1, `12 quart pot` 1, `dryer trays` 7. */
export interface Use {
  readonly resource: string;
  readonly amount: number;
}
