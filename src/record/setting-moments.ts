/** When a setting was read: at the run-off, as the line was shipped, as it was left at the site. */
export const settingMoments = ['run-off', 'shipped', 'as left'] as const;

export type SettingMoment = (typeof settingMoments)[number];
