"""What people declare: machine, spindle, tools, material, stock, job."""
