-- Edits a plan in Neovim's own language client: reads the diagnostics and a hover, applies a fix, reads again.
-- Arguments come by environment. The findings go out as one JSON object.
local server, plan, out = os.getenv('CRIB_SERVER'), os.getenv('CRIB_PLAN'), os.getenv('CRIB_OUT')
local found = {}

local function finish()
  local file = assert(io.open(out, 'w'))
  file:write(vim.json.encode(found))
  file:close()
  vim.cmd('qall!')
end

local function messages()
  local texts = {}
  for _, d in ipairs(vim.diagnostic.get(0)) do
    table.insert(texts, { code = d.code or (d.user_data and d.user_data.lsp and d.user_data.lsp.code), message = d.message, line = d.lnum })
  end
  return texts
end

local function work()
  vim.cmd('edit ' .. vim.fn.fnameescape(plan))
  -- Of the text that diagnostics were last published for: one text may get more than one publication.
  local published = -1
  local shown = vim.lsp.handlers['textDocument/publishDiagnostics']
  local client = assert(vim.lsp.start_client({
    cmd = { os.getenv('CRIB_NODE'), server, '--stdio' },
    root_dir = vim.fn.fnamemodify(plan, ':h'),
    handlers = {
      ['textDocument/publishDiagnostics'] = function(problem, result, ...)
        published = result.version
        return shown(problem, result, ...)
      end,
    },
  }))
  vim.lsp.buf_attach_client(0, client)
  assert(vim.wait(120000, function() return published >= 0 end, 10), 'no diagnostics came')
  found.before = messages()

  local line = tonumber(os.getenv('CRIB_LINE'))
  local at = { textDocument = vim.lsp.util.make_text_document_params(), position = { line = line, character = 6 } }
  local hover = vim.lsp.buf_request_sync(0, 'textDocument/hover', at, 120000)
  found.hover = hover[client].result.contents.value

  local range = { start = { line = line, character = 0 }, ['end'] = { line = line, character = 200 } }
  local actions = vim.lsp.buf_request_sync(0, 'textDocument/codeAction', {
    textDocument = at.textDocument, range = range, context = { diagnostics = {}, only = { 'quickfix' } },
  }, 120000)[client].result
  found.fixes = vim.tbl_map(function(a) return a.title end, actions)
  local seen = published
  vim.lsp.util.apply_workspace_edit(actions[1].edit, 'utf-16')
  found.text = table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, false), '\n')
  assert(vim.wait(120000, function() return published > seen end, 10), 'nothing was published after the fix')
  found.after = messages()
end

local ok, why = pcall(work)
if not ok then found.failed = tostring(why) end
finish()
