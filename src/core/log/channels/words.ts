/** Words in names and unit rows that tell what a column is. */
export const WORDS = {
  setPoint:
    /set[ _-]?(?:point|temp|value|val|t)\b|setpoint|\bset\b|\bsp\d?\b|_sp\b|\bsv\b|target|soll|sollwert|consigne|programm?ed|\bprogram\b|\bprog\b/i,
  output:
    /output|\bout\b|\bpower\b|\bduty\b|leistung|\bpwr\b|\brelays?\d?\b|\bssr\b|\bheat(?:er|ing)? ?(?:on|%)|\bmv ?%|\bpid\b/i,
  coldJunction:
    /cold.?j|\bcj[ct]?\b|ambient|internal|\bboard\b|junction|\bcase\b|\broom\b|raum|umgebung|enclosure|electronics/i,
  temperature:
    /temp|thermo|\btc[ _-]?\d*|tc\d|\bt[ _-]?\d+\b|zone|kiln|oven|furnace|chamber|\bprobe|sensor|pyro|\b(?:top|middle|mid|bottom|upper|lower|front|back|shelf|lid|floor)\b|\bpv\b|\bch(?:annel)?[ _.-]?\d+|ofen|\bist\b|actual|measured|process/i,
  nothing:
    /volt|batter|\bvbat|humid|\brh\b|pressure|press\b|flux|\bhrr|wind|rain|precip|mass|weight|\bgas\b|\bco2?\b|oxygen|\bo2\b|current|\bamps?\b|energy|kwh|cone|count|status|state|alarm|error|mode|segment|\bseg\b|\bstep\b|flag|signal|rssi|\bfan\b|rate|slope|heat ?flow/i,
} as const;

/** A unit that is none of temperature. */
export const OTHER_UNIT =
  /^[([]?\s*(?:%|mV|µV|V|A|mA|W|kW|kWh?|kW\/m[2²]|W\/m[2²]|mW|mW\/mg|W\/g|Pa|hPa|kPa|mbar|bar|ppm|rpm|mg|g|kg|mm|m\/s|l\/min|s|min|h|Hz|pH|lx)\s*[)\]]?$/i;

/** Such a unit inside a name: `Heat flux (kW/m2)`. */
export const OTHER_UNIT_IN_NAME =
  /[([]\s*(?:%|mV|µV|V|A|mA|W|kW|kWh?|kW\/m[2²]|W\/m[2²]|mW|mW\/mg|Pa|hPa|kPa|mbar|bar|ppm|rpm|mg|g|kg|mm|m\/s|Hz|%\s?RH)\s*[)\]]|_(?:mv|kw|pct|percent|hpa|rpm)\b/i;
