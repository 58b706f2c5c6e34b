-- One session of an editor with `gclint editor`; what it saw goes to the file told.json as JSON.
-- The editor has read the set-up of gclint/docs/editor.md before.

local seen = {}

local function waited(what, fits)
  if not vim.wait(30000, fits, 5) then error("waited in vain for " .. what) end
end

local function rules()
  local found = {}
  for _, each in ipairs(vim.diagnostic.get(0)) do
    if each.source == "gclint" and each.code and each.code ~= "not-judged" then
      table.insert(found, { rule = each.code, line = each.lnum + 1, column = each.col + 1, severity = each.severity, says = each.message })
    end
  end
  return found
end

local function has(rule)
  for _, each in ipairs(rules()) do
    if each.rule == rule then return each end
  end
end

local function at(line, column) -- both from 1
  return { textDocument = vim.lsp.util.make_text_document_params(), position = { line = line - 1, character = column - 1 } }
end

local function asked(method, params)
  local answers = vim.lsp.buf_request_sync(0, method, params, 30000) or {}
  for _, each in pairs(answers) do
    if each.error then error(method .. ": " .. vim.inspect(each.error)) end
    return each.result
  end
  error("no answer to " .. method)
end

local function session()
  vim.cmd("edit tray.nc")
  waited("findings", function() return has("chip-too-thin") end)
  seen.opened = rules()
  local thin = has("chip-too-thin")

  seen.hover = asked("textDocument/hover", at(thin.line, 4)).contents.value
  local place = asked("textDocument/definition", at(2, 1))
  seen.definition = { uri = (place[1] or place).uri, line = (place[1] or place).range.start.line + 1 }
  seen.symbols = vim.tbl_map(function(each) return each.name end, asked("textDocument/documentSymbol", at(1, 1)))

  -- a quick change, taken
  local request = at(thin.line, thin.column)
  request.range = { start = request.position, ["end"] = request.position }
  request.context = { diagnostics = {} }
  for _, each in ipairs(asked("textDocument/codeAction", request)) do
    if each.edit then
      seen.action = each.title
      vim.lsp.util.apply_workspace_edit(each.edit, "utf-16")
      break
    end
  end
  waited("the change to be checked", function() return not has("chip-too-thin") end)
  seen.changed = vim.api.nvim_buf_get_lines(0, 0, -1, false)

  -- keys typed: the old feed again
  vim.api.nvim_win_set_cursor(0, { thin.line, 0 })
  local began = vim.loop.hrtime()
  vim.api.nvim_feedkeys("0fFlC300" .. vim.api.nvim_replace_termcodes("<Esc>", true, false, true), "xt", false)
  waited("findings of the typed text", function() return has("chip-too-thin") end)
  seen.milliseconds = (vim.loop.hrtime() - began) / 1e6
  seen.typed = rules()
  seen.line = vim.api.nvim_buf_get_lines(0, thin.line - 1, thin.line, false)[1]

  -- a declaration, not saved
  vim.cmd("split shop.toml")
  vim.cmd([[%s/flutes = 2/flutes = "two"/]])
  waited("the fault of the declaration", function() return #vim.diagnostic.get(0) == 1 end)
  seen.declaration = vim.diagnostic.get(0)[1]
  seen.declaration = { line = seen.declaration.lnum + 1, says = seen.declaration.message }
end

local worked, fault = pcall(session)
if not worked then seen.fault = tostring(fault) end
vim.fn.writefile({ vim.json.encode(seen) }, "told.json")
vim.cmd("qall!")
