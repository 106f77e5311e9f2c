/**
 * Water and steam by IAPWS-IF97, the parts that a washer wants: the saturation line (region 4), liquid below
 * 350 degC (region 1), steam up to the saturation line of that (region 2). Coefficients from the release.
 */

/** Specific gas constant of water, J/(kg K), of IF97. */
const R = 461.526;

/** Ends of the saturation line that regions 1 and 2 share, Pa: 0.01 degC and 350 degC. */
export const saturationEnds = { least: 611.66, most: 16.5e6 } as const;

const n4 = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;

/**
 * Temperature at which water boils at a pressure.
 *
 * Method   IF97 region 4, backward form of the quadratic in beta = (p/1 MPa)^(1/4) and theta
 * Symbols  p  pressure  scalar  Pa absolute  611 to 22e6
 * Returns  K
 * Cost     O(1), no iteration
 * Source   IAPWS R7-97(2012), equation 31
 */
export const boilingTemperature = (pressure: number): number => {
  const beta = Math.sqrt(Math.sqrt(pressure / 1e6));
  const beta2 = beta * beta;
  const e = beta2 + n4[2] * beta + n4[5];
  const f = n4[0] * beta2 + n4[3] * beta + n4[6];
  const g = n4[1] * beta2 + n4[4] * beta + n4[7];
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const sum = n4[9] + d;
  return 0.5 * (sum - Math.sqrt(sum * sum - 4 * (n4[8] + n4[9] * d)));
};

/**
 * Pressure at which water boils at a temperature.
 *
 * Method   IF97 region 4
 * Symbols  T  temperature  scalar  K  273.15 to 647.096
 * Returns  Pa absolute
 * Cost     O(1)
 * Source   IAPWS R7-97(2012), equation 30
 */
export const boilingPressure = (temperature: number): number => {
  const theta = temperature + n4[8] / (temperature - n4[9]);
  const a = (theta + n4[0]) * theta + n4[1];
  const b = (n4[2] * theta + n4[3]) * theta + n4[4];
  const c = (n4[5] * theta + n4[6]) * theta + n4[7];
  const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
  return 1e6 * root ** 4;
};

/** Triples I, J, n of a sum of n x^I y^J. */
type Terms = readonly (readonly [i: number, j: number, n: number])[];

const region1: Terms = [
  [0, -2, 0.14632971213167],
  [0, -1, -0.84548187169114],
  [0, 0, -0.3756360367204e1],
  [0, 1, 0.33855169168385e1],
  [0, 2, -0.95791963387872],
  [0, 3, 0.15772038513228],
  [0, 4, -0.16616417199501e-1],
  [0, 5, 0.81214629983568e-3],
  [1, -9, 0.28319080123804e-3],
  [1, -7, -0.60706301565874e-3],
  [1, -1, -0.18990068218419e-1],
  [1, 0, -0.32529748770505e-1],
  [1, 1, -0.21841717175414e-1],
  [1, 3, -0.5283835796993e-4],
  [2, -3, -0.47184321073267e-3],
  [2, 0, -0.30001780793026e-3],
  [2, 1, 0.47661393906987e-4],
  [2, 3, -0.44141845330846e-5],
  [2, 17, -0.72694996297594e-15],
  [3, -4, -0.31679644845054e-4],
  [3, 0, -0.28270797985312e-5],
  [3, 6, -0.85205128120103e-9],
  [4, -5, -0.22425281908e-5],
  [4, -2, -0.65171222895601e-6],
  [4, 10, -0.14341729937924e-12],
  [5, -8, -0.40516996860117e-6],
  [8, -11, -0.12734301741641e-8],
  [8, -6, -0.17424871230634e-9],
  [21, -29, -0.68762131295531e-18],
  [23, -31, 0.14478307828521e-19],
  [29, -38, 0.26335781662795e-22],
  [30, -39, -0.11947622640071e-22],
  [31, -40, 0.18228094581404e-23],
  [32, -41, -0.93537087292458e-25],
];

/**
 * Enthalpy of liquid water.
 *
 * Method   h = R T tau gamma_tau(7.1 - pi, tau - 1.222),  pi = p/16.53 MPa, tau = 1386 K/T
 * Symbols  p  pressure     scalar  Pa absolute  up to 100e6
 *          T  temperature  scalar  K            273.15 to 623.15, not above boiling
 * Returns  J/kg over the liquid at the triple point
 * Cost     O(1), 34 terms
 * Source   IAPWS R7-97(2012), region 1
 */
export const waterEnthalpy = (pressure: number, temperature: number): number => {
  const x = 7.1 - pressure / 16.53e6;
  const y = 1386 / temperature - 1.222;
  let slope = 0;
  for (const [i, j, n] of region1) slope += n * x ** i * j * y ** (j - 1);
  return R * 1386 * slope;
};

/** Volume of a kilogram of liquid water, m3/kg: region 1, v = R T/16.53 MPa gamma_pi. */
export const waterVolume = (pressure: number, temperature: number): number => {
  const x = 7.1 - pressure / 16.53e6;
  const y = 1386 / temperature - 1.222;
  let slope = 0;
  for (const [i, j, n] of region1) if (i > 0) slope -= n * i * x ** (i - 1) * y ** j;
  return ((R * temperature) / 16.53e6) * slope;
};

const ideal2: readonly (readonly [j: number, n: number])[] = [
  [0, -0.96927686500217e1],
  [1, 0.10086655968018e2],
  [-5, -0.5608791128302e-2],
  [-4, 0.71452738081455e-1],
  [-3, -0.40710498223928],
  [-2, 0.14240819171444e1],
  [-1, -0.4383951131945e1],
  [2, -0.28408632460772],
  [3, 0.21268463753307e-1],
];

const region2: Terms = [
  [1, 0, -0.17731742473213e-2],
  [1, 1, -0.17834862292358e-1],
  [1, 2, -0.45996013696365e-1],
  [1, 3, -0.57581259083432e-1],
  [1, 6, -0.5032527872793e-1],
  [2, 1, -0.33032641670203e-4],
  [2, 2, -0.18948987516315e-3],
  [2, 4, -0.39392777243355e-2],
  [2, 7, -0.43797295650573e-1],
  [2, 36, -0.26674547914087e-4],
  [3, 0, 0.20481737692309e-7],
  [3, 1, 0.43870667284435e-6],
  [3, 3, -0.3227767723857e-4],
  [3, 6, -0.15033924542148e-2],
  [3, 35, -0.40668253562649e-1],
  [4, 1, -0.78847309559367e-9],
  [4, 2, 0.12790717852285e-7],
  [4, 3, 0.48225372718507e-6],
  [5, 7, 0.22922076337661e-5],
  [6, 3, -0.16714766451061e-10],
  [6, 16, -0.21171472321355e-2],
  [6, 35, -0.23895741934104e2],
  [7, 0, -0.5905956432427e-17],
  [7, 11, -0.12621808899101e-5],
  [7, 25, -0.38946842435739e-1],
  [8, 8, 0.11256211360459e-10],
  [8, 36, -0.82311340897998e1],
  [9, 13, 0.19809712802088e-7],
  [10, 4, 0.10406965210174e-18],
  [10, 10, -0.10234747095929e-12],
  [10, 14, -0.10018179379511e-8],
  [16, 29, -0.80882908646985e-10],
  [16, 50, 0.10693031879409],
  [18, 57, -0.33662250574171],
  [20, 20, 0.89185845355421e-24],
  [20, 35, 0.30629316876232e-12],
  [20, 48, -0.42002467698208e-5],
  [21, 21, -0.59056029685639e-25],
  [22, 53, 0.37826947613457e-5],
  [23, 39, -0.12768608934681e-14],
  [24, 26, 0.73087610595061e-28],
  [24, 40, 0.55414715350778e-16],
  [24, 58, -0.9436970724121e-6],
];

/**
 * Enthalpy of steam.
 *
 * Method   h = R T tau (gamma_tau of the ideal gas + gamma_tau of the rest),  pi = p/1 MPa, tau = 540 K/T
 * Symbols  p  pressure     scalar  Pa absolute
 *          T  temperature  scalar  K  not below boiling, 273.15 to 1073.15
 * Returns  J/kg over the liquid at the triple point
 * Cost     O(1), 52 terms
 * Source   IAPWS R7-97(2012), region 2
 */
export const steamEnthalpy = (pressure: number, temperature: number): number => {
  const x = pressure / 1e6;
  const tau = 540 / temperature;
  let slope = 0;
  for (const [j, n] of ideal2) slope += n * j * tau ** (j - 1);
  for (const [i, j, n] of region2) if (j > 0) slope += n * x ** i * j * (tau - 0.5) ** (j - 1);
  return R * 540 * slope;
};

/** Volume of a kilogram of steam, m3/kg: region 2, v = R T/p (1 + pi gamma_pi of the rest). */
export const steamVolume = (pressure: number, temperature: number): number => {
  const x = pressure / 1e6;
  const y = 540 / temperature - 0.5;
  let slope = 0;
  for (const [i, j, n] of region2) slope += n * i * x ** i * y ** j;
  return ((R * temperature) / pressure) * (1 + slope);
};

/** Heat that a kilogram of water takes to boil away at a temperature, J/kg. */
export const latentHeat = (temperature: number): number => {
  const p = boilingPressure(temperature);
  return steamEnthalpy(p, temperature) - waterEnthalpy(p, temperature);
};

/** Pressure of a bath open to the room, Pa: its enthalpy moves by 0.01 % between sea level and 4 000 m. */
const open = 101_325;

/** Heat that takes a kilogram of open water from one temperature to another, J/kg. */
export const waterHeat = (from: number, to: number): number =>
  waterEnthalpy(open, to) - waterEnthalpy(open, from);
