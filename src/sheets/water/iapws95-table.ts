/** Water at 101.325 kPa by the full IAPWS equations: degC, kg/m3, Pa s, m2/s. Computed with another implementation. */
export const iapws95Rows = [
  [5, 999.967, 1518.17e-6, 1.5182e-6],
  [10, 999.703, 1305.9e-6, 1.3063e-6],
  [20, 998.207, 1001.6e-6, 1.0034e-6],
  [40, 992.216, 652.73e-6, 0.6579e-6],
  [60, 983.196, 466.04e-6, 0.474e-6],
  [80, 971.79, 354.05e-6, 0.3643e-6],
  [95, 961.888, 297.09e-6, 0.3089e-6],
] as const;
