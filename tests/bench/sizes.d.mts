export function moduleSize(module: string, from: string): Promise<number>;
export function functionSize(path: string, from: string): Promise<number>;
