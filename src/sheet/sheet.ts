/** What a run sheet holds, before it is drawn: texts with marks for boxes and blanks, not yet escaped. */

/** What goes on beside the hands: the times of day it starts, and what it is. */
export interface Cell {
  readonly times: readonly string[];
  readonly text: string;
}

/** One row of the front: one thing that one person does, and what goes on beside it. */
export interface Row {
  /** Minute of the plan that it starts at. */
  readonly at: number;
  /** Letters of the products that it is for. */
  readonly letters: string;
  /** Minute of each time that it is done; each has a box to tick. */
  readonly starts: readonly number[];
  /** What stands in the column of times. */
  readonly time: string;
  /** What stands after each box: its time of day or its day where there are several, otherwise nothing. */
  readonly boxes: readonly string[];
  readonly kind: 'work' | 'timer' | 'caution' | 'break' | 'day';
  readonly hands: string;
  readonly stove: readonly Cell[];
  readonly canner: readonly Cell[];
  readonly trays: readonly Cell[];
  /** Timer lines: one for each load. */
  readonly loads: readonly string[];
  /** Places in the schedule of the tasks that it stands for. */
  readonly tasks: readonly number[];
  /** Rows alike are the same work done again. */
  readonly key: string;
}

/** A line with a word before it. */
export interface Line {
  readonly label: string;
  readonly text: string;
}

export interface Front {
  /** Title, day, place, cooks, hours. */
  readonly head: readonly string[];
  readonly invented: boolean;
  /** Buy, count on, ready. */
  readonly lines: readonly Line[];
  readonly rows: readonly Row[];
  readonly foot: readonly Line[];
}

/** A card for the station of one product. */
export interface Card {
  readonly letter: string;
  readonly title: string;
  readonly sub: string;
  /** Figures to read across the room. */
  readonly big: readonly string[];
  readonly lines: readonly Line[];
}

export interface Section {
  readonly title: string;
  readonly lines: readonly string[];
}

export interface Sheet {
  readonly title: string;
  readonly front: Front;
  readonly cards: readonly Card[];
  readonly back: readonly Section[];
}
