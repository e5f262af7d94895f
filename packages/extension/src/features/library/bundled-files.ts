import * as vscode from 'vscode';
import type { Server } from '../../session/server.js';

/** Serves `cribwright:/library/timber.crib` and `cribwright:/rules/crib-height.md`. Both come from the server. */
export class BundledFiles implements vscode.FileSystemProvider {
  private readonly changes = new vscode.EventEmitter<vscode.FileChangeEvent[]>();
  readonly onDidChangeFile = this.changes.event;

  constructor(private readonly server: Pick<Server, 'bundledFile' | 'bundledFiles' | 'rulePage'>) {}

  watch(): vscode.Disposable {
    return new vscode.Disposable(() => undefined);
  }

  async stat(uri: vscode.Uri): Promise<vscode.FileStat> {
    if (folders.has(uri.path)) return { type: vscode.FileType.Directory, ctime: 0, mtime: 0, size: 0 };
    const { byteLength } = await this.readFile(uri);
    return {
      type: vscode.FileType.File,
      ctime: 0,
      mtime: 0,
      size: byteLength,
      permissions: vscode.FilePermission.Readonly,
    };
  }

  async readDirectory(uri: vscode.Uri): Promise<[string, vscode.FileType][]> {
    if (uri.path !== '/library') return [];
    const { uris } = await this.server.bundledFiles();
    return uris.map((file) => [file.slice(file.lastIndexOf('/') + 1), vscode.FileType.File]);
  }

  async readFile(uri: vscode.Uri): Promise<Uint8Array> {
    const text = await this.text(uri);
    if (text === undefined) throw vscode.FileSystemError.FileNotFound(uri);
    return new TextEncoder().encode(text);
  }

  private async text(uri: vscode.Uri): Promise<string | undefined> {
    const rule = /^\/rules\/([a-z0-9-]+)\.md$/.exec(uri.path)?.[1];
    if (rule !== undefined) return (await this.server.rulePage({ rule })).markdown;
    return (await this.server.bundledFile({ uri: uri.toString(true) })).text;
  }

  createDirectory(uri: vscode.Uri): never {
    throw vscode.FileSystemError.NoPermissions(uri);
  }
  writeFile(uri: vscode.Uri): never {
    throw vscode.FileSystemError.NoPermissions(uri);
  }
  delete(uri: vscode.Uri): never {
    throw vscode.FileSystemError.NoPermissions(uri);
  }
  rename(uri: vscode.Uri): never {
    throw vscode.FileSystemError.NoPermissions(uri);
  }
}

const folders: ReadonlySet<string> = new Set(['/', '/library', '/rules']);
