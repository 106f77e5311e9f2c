/** Standard acceleration of free fall, m/s2. Exact by definition (3rd CGPM 1901; NIST SP 811, appendix B.8). */
export const standardGravity = 9.80665;
