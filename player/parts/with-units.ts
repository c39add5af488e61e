const unit = /(\d) (?=(?:[pnµmkMG]?(?:V|A|Ω|Hz|s|F|W|m)(?:pp|rms)?|°C|%)(?![\p{L}\p{N}]))/gu;

/** Text in which no line ends between a number and its unit: `more than 300 V`. */
export const withUnits = (text: string): string => text.replace(unit, '$1\u00a0');
