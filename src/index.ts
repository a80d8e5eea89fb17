/**
 * stillroom: calculations for people who preserve food. Each module is also a subpath of the package.
 * @module
 */

export * from './acid/index';
export * from './charts/index';
export * from './drying/index';
export * from './errors/index';
export * from './foods/index';
export * from './freezing/index';
export * from './heat/index';
export * from './jars/index';
export * from './lethality/index';
export * from './plan/index';
export * from './process/index';
export * from './produce/index';
export * from './quantity/index';
export * from './record/index';
export * from './sheet/index';
export * from './solution/index';
export * from './sources/index';
export * from './steam/index';
export * from './sugar/index';
export * from './water-activity/index';
