/** One international foot, m (exact, 1959 agreement). */
export const foot = 0.3048;
export const inch = 0.0254;
