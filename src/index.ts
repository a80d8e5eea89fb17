/**
 * stillroom: calculations for people who preserve food. Here is what a kitchen asks; the rest of each craft, and the
 * types of all arguments and answers, are in its own module (`stillroom/jars`).
 * @module
 */

// acid, pickles
export { acidClass, acidForJars, brine } from './acid/index';
// the dryer: how to, and when it is done
export { dryingGuide, finishForecast, leather, stopWeight } from './drying/index';
// amounts with units, the one error, the citations
export { StillroomError } from './errors/index';
// the pantry: which food a name means, and what is known of it
export { findFood, whatIsKnown } from './foods/index';
// the freezer
export { blanching, freezerPack } from './freezing/index';
// jars: how full, how many, how many loads; did they seal
export { checkHeadspace, checkSeal, fillJar, jarsFor, loadsFor } from './jars/index';
// the day and its sheet
export { planDay } from './plan/index';
// the canner: the tested process, at this elevation, by the clock
export { loadTimeline, testedProcess } from './process/index';
// before the fruit is cut: how much ready food, how much to buy, how many jars
export { kitchenMeasure, rawForJars, readyFromRaw } from './produce/index';
export { convert, formatQuantity, type Money, type Quantity, type Range } from './quantity/index';
// what can it become?
export { ownProcess, recipe, waysToKeep } from './recipes/index';
// afterwards: the record, the label, better figures for next time
export { batchRecord, labelFields, learnFromRecords, reviewBatch, useBy } from './record/index';
export { runSheet } from './sheet/index';
export { type Basis, type Caution, type Instead, type NotKnown, type NotTested, sources } from './sources/index';
export { boilingTemperature } from './steam/index';
// the pot: syrup, sweetness, jam and its set
export { gelTemperature, jamBalance, sweeten, syrup } from './sugar/index';
export { keeps } from './water-activity/index';
