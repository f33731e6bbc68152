import type { Fault } from '../../load/loaded.ts'
import type { FileCheck } from '../check.ts'
import { detail, details, shortList } from './say.ts'

const KB = 1024

export const filePlanFile: FileCheck = {
  card: {
    code: 'file/plan-file',
    severity: 'error',
    looksAt:
      'The GeoJSON file that the drawing of a site names: whole JSON, kinds that the drawing has a line for, shapes that fit them, corners near the site, no more than a sheet can show.',
    why: 'A curb that is left out or lies in another place sends the one who digs by the drawing to the wrong spot.',
    sources: ['rfc-7946', 'project-rule'],
    fix: 'Export the file again as longitude and latitude, and give each feature a kind.',
    worked: {
      example: 'drawing: { origin: { latitude: 54.97, longitude: -1.61 }, file: swapped.geojson }',
      instead: 'drawing: { origin: { latitude: 54.97, longitude: -1.61 }, file: plan.geojson }'
    }
  },
  word: fault => {
    const words = WORDS[detail(fault, 'kind')] ?? OTHERWISE
    const at = detail(fault, 'feature')
    const { message, fix } = words(fault)
    return { message: at === '' ? message : `Feature ${at}: ${message}`, fix }
  }
}

type Said = (fault: Fault) => { readonly message: string; readonly fix: string }

const OTHERWISE: Said = () => ({ message: 'The file cannot be read as a drawing.', fix: 'Export it again as GeoJSON.' })

const WORDS: Readonly<Record<string, Said>> = {
  json: () => ({
    message: 'The file is not whole JSON from here on.',
    fix: 'Export it again, or close what is open here.'
  }),
  empty: () => ({
    message: 'The file is empty.',
    fix: 'Export it again, or take "file:" out of the drawing.'
  }),
  'no-collection': () => ({
    message: 'The file is not a GeoJSON FeatureCollection.',
    fix: 'Export the lines as GeoJSON, RFC 7946.'
  }),
  crs: () => ({
    message: 'The coordinates are of another reference system.',
    fix: 'Export longitude and latitude, WGS 84 (RFC 7946), or write file-unit where they are east and north of the origin.'
  }),
  large: fault => ({
    message: `The file has ${Math.ceil(Number(detail(fault, 'bytes')) / KB)} KB; ${Number(detail(fault, 'most')) / KB} KB is the most.`,
    fix: 'Leave out what the drawing does not need, and thin the corners of curves.'
  }),
  corners: fault => ({
    message: `The file has ${detail(fault, 'corners')} corners; ${detail(fault, 'most')} is the most that one sheet can show.`,
    fix: 'Leave out what the drawing does not need, and thin the corners of curves.'
  }),
  'no-origin': () => ({
    message: 'The file is in degrees, the rest of the drawing in meters, and nothing joins them.',
    fix: 'Write where 0 east and 0 north lie, such as "origin: { latitude: 54.97, longitude: -1.61 }".'
  }),
  'no-feature': () => ({
    message: 'it is no Feature.',
    fix: 'Write each thing as a Feature with geometry and properties.'
  }),
  'no-kind': fault => {
    const [written, near] = [detail(fault, 'written'), detail(fault, 'nearest')]
    return {
      message: written === '' ? 'nothing says what it is.' : `the drawing has no line for '${written}'.`,
      fix:
        near === ''
          ? `Write a kind in its properties: ${shortList(details(fault, 'known'), 'or')}. What is none of these is "other", with its name.`
          : `Write "kind": "${near}".`
    }
  },
  geometry: fault => ({
    message: `'${detail(fault, 'what')}' cannot be drawn from ${detail(fault, 'written')}.`,
    fix:
      SHAPES[detail(fault, 'what')] ??
      'Give it a LineString of two corners or more, or a Polygon of four, the last as the first.'
  }),
  'no-name': fault => ({
    message: `"${detail(fault, 'what')}" has no name.`,
    fix: 'Write "name" in its properties, as the ties or the zones call it.'
  }),
  corner: fault => ({
    message: `"${detail(fault, 'written')}" is no corner.`,
    fix: 'Write [longitude, latitude] in degrees.'
  }),
  degrees: fault => ({
    message: `${detail(fault, 'written')} cannot be degrees of longitude and latitude.`,
    fix: 'Export WGS 84 degrees, or write file-unit where the numbers are east and north of the origin.'
  }),
  swapped: fault => ({
    message: `${detail(fault, 'what')} would lie ${detail(fault, 'km')} km from the site: latitude and longitude are swapped.`,
    fix: 'Write longitude first, then latitude.'
  }),
  far: fault => ({
    message: `${detail(fault, 'what')} would lie ${detail(fault, 'km')} km from the site, at ${detail(fault, 'written')}.`,
    fix: 'Look whether it is of this site, and whether the origin is right.'
  })
}

const SHAPES: Readonly<Record<string, string>> = {
  point: 'Give it a Point.',
  zone: 'Give it a Polygon of one ring; part ground with a hole in it into two.'
}
