/** The standard uncertainty of a value that lies anywhere within ± a, no value likelier than another: a / √3.
 *  Source: JCGM 100:2008 (GUM), 4.3.7. */
export const standardUncertainty = (a: number): number => a / Math.sqrt(3);
