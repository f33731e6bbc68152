/** What the tests use of the network model: its own declarations import without file endings, which this project's resolution refuses. */
declare module 'epanet-js' {
  export class Workspace {
    loadModule(): Promise<void>
    readonly version: number
  }

  export class Project {
    constructor(workspace: Workspace)
    init(report: string, out: string, units: FlowUnits, loss: HeadLossType): void
    addNode(id: string, type: NodeType): number
    addLink(id: string, type: LinkType, from: string, to: string): number
    getNodeIndex(id: string): number
    getLinkIndex(id: string): number
    setNodeValue(index: number, property: NodeProperty, value: number): void
    getNodeValue(index: number, property: NodeProperty): number
    getLinkValue(index: number, property: LinkProperty): number
    setJunctionData(index: number, elevation: number, demand: number, pattern: string): void
    setPipeData(index: number, length: number, diameter: number, roughness: number, minorLoss: number): void
    solveH(): void
    close(): void
  }

  export const FlowUnits: { readonly CMH: FlowUnits }
  export type FlowUnits = number & { readonly __flowUnits: true }
  export const HeadLossType: { readonly HW: HeadLossType }
  export type HeadLossType = number & { readonly __headLoss: true }
  export const NodeType: { readonly Junction: NodeType; readonly Reservoir: NodeType }
  export type NodeType = number & { readonly __nodeType: true }
  export const LinkType: { readonly Pipe: LinkType }
  export type LinkType = number & { readonly __linkType: true }
  export const NodeProperty: { readonly Elevation: NodeProperty; readonly Pressure: NodeProperty }
  export type NodeProperty = number & { readonly __nodeProperty: true }
  export const LinkProperty: { readonly Headloss: LinkProperty; readonly Velocity: LinkProperty }
  export type LinkProperty = number & { readonly __linkProperty: true }
}
