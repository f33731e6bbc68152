/** ISO/IEC 18004: a symbol of version V is 4V + 17 modules wide, with four modules of quiet zone on each side. */
export const QR = { modulesPerVersion: 4, modulesBase: 17, quietModules: 4, versions: 40 } as const

/** Symbol width is a tenth of the distance it is read from, and half as much again to be sure (common practice, no source). */
export const QR_DISTANCE_PER_WIDTH = 10
export const QR_SURE_MARGIN = 1.5
/** The smallest printed module that phones read well, in meters (common practice, no source). */
export const QR_LEAST_MODULE_M = 0.0005
