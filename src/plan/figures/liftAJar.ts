import { MINUTES_A_JAR } from '../../process/loadTimeline';

/** Minutes of one pair of hands to put a jar into the canner and to lift it out again. */
export const LIFT_A_JAR = 2 * MINUTES_A_JAR.likely;
