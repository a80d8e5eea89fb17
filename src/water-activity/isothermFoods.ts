import { answer } from '../common/answer';
import { isothermFoodsKnown } from './isotherm';

/** One published set of constants. */
export interface IsothermSet {
  readonly model: string;
  readonly state: string;
  /** Lowest and highest temperature in degC; none where the copy read prints none. */
  readonly temperatures?: readonly [number, number];
  readonly source: string;
}
export interface IsothermFoodSets {
  readonly food: string;
  readonly sets: readonly IsothermSet[];
}

/**
 * The foods with a published isotherm, and what is published for each. Most fruits are not among them: no complete
 * set of constants for them could be read, and none is invented.
 *
 * @example
 * ```ts
 * import { isothermFoods } from 'stillroom/water-activity';
 *
 * isothermFoods()[0].food; // => 'kiwifruit'
 * ```
 */
export function isothermFoods(): IsothermFoodSets[] {
  return answer(
    isothermFoodsKnown.map(({ name, sets }) => ({
      food: name,
      sets: sets.map(({ model, state, temperature_degC, source }) => ({
        model,
        state,
        ...(temperature_degC === null ? {} : { temperatures: temperature_degC }),
        source,
      })),
    })),
  );
}
