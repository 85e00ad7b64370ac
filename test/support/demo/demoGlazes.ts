/** A glaze file of the demo folder. */
export interface DemoGlaze {
  readonly name: string;
  readonly shows: string;
  readonly text: string;
}

/** The glazes of the invented studio, all from ideal minerals. */
export const DEMO_GLAZES: readonly DemoGlaze[] = [
  {
    name: "glaze-crackle.yaml",
    shows: "an alkaline glaze of high expansion, meant to crackle on stoneware",
    text: `# Invented, like the studio: ideal minerals, no tile was ever fired.
formatVersion: 1
title: Tarrowmere crackle
invented: true
cone: "5"
crackle: true

recipe:
  nepheline: 34
  soda ash: 6
  ulexite: 12
  whiting: 7
  kaolinite: 4
  quartz: 37
additions:
  tin oxide: 1
  montmorillonite: 2

body: stoneware cone 6
wall: 6 mm
coat: 0.6 mm
glazedSides: one
notes: Lay the ware into strong tea when it is cold; the cracks take the colour.
`,
  },
  {
    name: "glaze-fitting.yaml",
    shows: "a glaze of low expansion for the same stoneware; an analysis of its own for the clay",
    text: `# Invented, like the studio and the analysis of its clay: no tile was ever fired.
formatVersion: 1
title: Tarrowmere liner
invented: true
cone: "5"

recipe:
  soda feldspar: 40
  colemanite: 14
  talc: 5
  wollastonite: 12
  Brackwater clay: 12
  quartz: 17
additions:
  zircon: 2

materials:
  Brackwater clay:
    oxides: { SiO2: 49.2, Al2O3: 35.6, Fe2O3: 0.8, TiO2: 0.3, K2O: 1.3, MgO: 0.3 }
    loi: 12.4
    density: 2.6
    source: invented

body: stoneware cone 6
wall: 6 mm
coat: 0.4 mm
glazedSides: both
`,
  },
  {
    name: "glaze-pond-ice.yaml",
    shows: "the glaze of the crackle tiles; its expansion measured, on a bar that never was",
    text: `# Invented, like the studio and the measurement: no tile was ever fired.
formatVersion: 1
title: pond ice
invented: true
cone: "5"
crackle: true

recipe:
  nepheline: 38
  soda ash: 3
  ulexite: 12
  whiting: 10
  kaolinite: 7
  quartz: 30
additions:
  montmorillonite: 2

expansion:
  value: 8.2e-6
  plusMinus: 0.2e-6
  to: 500
  how: a bar in a dilatometer, both invented

body: stoneware cone 6
wall: 6 mm
coat: 0.6 mm
glazedSides: one
`,
  },
];
